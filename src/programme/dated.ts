import type { ProgrammeFile } from "../intake/schema/programme.ts"
import { dayText } from "../kernels/calendar/date-text.ts"
import { clockAt, type Instant, instantAt } from "../kernels/calendar/instant.ts"
import type { Finding } from "../kernels/finding.ts"
import { findCycle } from "../kernels/network/activity.ts"
import type { Rules } from "../rulebook/rules.ts"
import type { Step } from "../trades/trade.ts"
import { chainsOf, type LeastFinish, leastFinish } from "./bound.ts"
import { type Calendars, calendarFindings, calendarsOf, limit } from "./calendars.ts"
import { dayBlocks } from "./day-blocks.ts"
import { firstNightOf } from "./first-night.ts"
import { type Wait, waitsFor } from "./house-rules.ts"
import { householdFindings } from "./household.ts"
import { type Cause, type Placeable, type Placing, placeAll } from "./place.ts"
import type { Crew, DatedStep, FinishBound, Hold, Programme, Site } from "./programme.ts"
import { movesOf, progressOf } from "./progress.ts"
import { airedBy } from "./quiet.ts"
import { type Delay, reasonOf } from "./reason.ts"
import { bestPlacing } from "./search.ts"
import { latestFinishes } from "./slack.ts"
import type { Chains } from "./turns.ts"
import { limitsOf, type Unit, type UnitPlan, unitPlan } from "./units.ts"
import { visitFindings, visitsOf } from "./visits.ts"
import { type Ways, waysOf } from "./ways.ts"
import { WorkTable } from "./work-table.ts"

/** What is to be dated. */
export interface ProgrammeTask {
  steps: readonly Step[]
  site: Site
  file: ProgrammeFile
  rules: Rules
  /** Days before which steps cannot begin for want of goods or a choice. */
  holds?: readonly Hold[]
  /** Time zone of the site. */
  zone: string
  /** Most changes the search tries, where fewer than usual will do. */
  attempts?: number
}

/**
 * The dated sequence: no visits over a crew's limit where that can be had, then the least finish found, then the fewest
 * returns. Every step has its reason, its float and its place on the calendar; what is done or begun stays put.
 * @returns steps in order of start; a ring of requirements, a trade without a crew, hours that are not there, or visits
 * over the limit as findings
 */
export function datedProgramme(task: ProgrammeTask): Programme {
  const { steps, file, zone } = task
  const airing = task.rules.value("solvent-before-bed")
  const calendars = calendarsOf(file, zone, airing)
  const blank = empty(file, calendars)
  const ways = waysOf(task.site)
  const lacking = calendarFindings(
    file,
    calendars,
    new Set(steps.map((step) => limitsOf(step, task.site, ways))),
  )
  if (lacking.length > 0) return { ...blank, findings: lacking }
  const { ring, plan, findings } = planOf(task, ways)
  if (ring) return { ...blank, findings: [ringFinding(ring, steps)] }
  if (plan.units.length === 0) return { ...blank, findings }
  const given = placeableOf(plan, file, calendars)
  const chains = chainsOf(given)
  const paper: Paper = { zone, aired: airedBy(file.bedtime, airing) }
  const { placing: first, choice } = bestPlacing(given, chains, task.attempts)
  const firstDated = datedSteps(given, first, paper)
  const progress = progressOf(file, given, first, calendars)
  const later = { ...given, opening: progress.opening, pinned: progress.pinned }
  const placing =
    progress.pinned.size > 0 ? placeAll(later, { ...choice, priority: [...first.start] })! : first
  const dated = placing === first ? firstDated : datedSteps(later, placing, paper)
  const visits = visitsOf(dated, file.crews, calendars[0]!)
  const last = clockAt(Math.max(...placing.finish) as Instant, zone).date
  const bound = placing === first ? boundOf(given, chains, zone) : boundOf(later, chainsOf(later), zone)
  const firstNight = firstNightOf(dated, task.site, {
    ways,
    zone,
    controlVisit: file.household?.controlVisit,
  })
  return {
    ...blank,
    steps: dated,
    visits,
    finish: last,
    bound: { ...bound, proven: last <= bound.finish },
    firstNight,
    moves: placing === first ? [] : movesOf(firstDated, dated, file.progress, zone),
    labour: labourOf(dated),
    findings: [
      ...findings,
      ...progress.findings,
      ...placing.relaxed.map((unit) => relaxedFinding(plan, unit)),
      ...heldFindings(plan, placing),
      ...visitFindings(visits, file.crews),
      ...householdFindings({
        steps: dated,
        firstNight,
        site: task.site,
        ways,
        file,
        zone,
        relaxed: placing.relaxed.length > 0,
      }),
    ],
  }
}

function empty(file: ProgrammeFile, calendars: Calendars): Programme {
  const calm = calendars[0]!
  return {
    zone: calm.zone,
    calendar: calm,
    crews: file.crews,
    steps: [],
    visits: [],
    start: file.start,
    finish: file.start,
    bound: { finish: file.start, proven: false, by: "" },
    firstNight: null,
    moves: [],
    labour: new Map(),
    findings: [],
  }
}

/** The plan by numbers; a doorway of one day that would wait for itself is taken step by step instead. */
function planOf(task: ProgrammeTask, ways: Ways) {
  const { steps, site, file, rules, holds } = task
  const blocks = dayBlocks(steps, site, ways)
  for (;;) {
    const waits = waitsFor({ steps, site, ways, blocks })
    const { plan, findings } = unitPlan({ steps, waits, blocks, site, ways, file, rules, holds })
    const ring = findCycle(steps.map((step) => ({ id: step.key, duration: 0, after: linksOf(waits, step) })))
    const knot = findCycle(
      plan.units.map((unit, index) => ({
        id: String(index),
        duration: 0,
        after: unit.waits.map((wait) => ({ from: String(wait.unit) })),
      })),
    )
    const door = knot?.map((id) => plan.units[Number(id)]!).find((unit) => unit.oneDay)
    if (!door) return { ring, plan, findings }
    for (const step of door.steps) blocks.delete(step.key)
  }
}

function linksOf(waits: ReadonlyMap<string, readonly Wait[]>, step: Step): { from: string }[] {
  return (waits.get(step.key) ?? []).map(({ key }) => ({ from: key }))
}

function placeableOf(plan: UnitPlan, file: ProgrammeFile, calendars: Calendars): Placeable {
  const opening = instantAt(file.start, file.hours[0]!.from, calendars[0]!.zone)
  const unlimited = new WorkTable(calendars[0]!, file.start)
  return {
    plan,
    tables: calendars.map((calendar, limits) =>
      limits > 0 && plan.units.some((unit) => unit.limits === limits)
        ? new WorkTable(calendar, file.start)
        : unlimited,
    ),
    opening,
    began: opening,
    release: Float64Array.from(plan.units, ({ hold }) =>
      hold ? instantAt(hold.from, "00:00", calendars[0]!.zone) : 0,
    ),
    pinned: new Map(),
  }
}

/** What dated steps are told by. */
interface Paper {
  zone: string
  /** The clock time by which solvent and oil are done where people sleep. */
  aired: string
}

/** Units taken apart into their steps again, in order of start. */
function datedSteps(given: Placeable, placing: Placing, { zone, aired }: Paper): DatedStep[] {
  const { plan } = given
  const calm = given.tables[0]!
  const latest = latestFinishes(given, placing)
  const dated = plan.units.flatMap((unit, index) => {
    const cause = placing.cause[index]!
    const table = given.tables[unit.limits]!
    const people = placing.people[index]!
    const delay = delayOf(given, unit, { from: placing.from[index]!, start: placing.start[index]!, aired })
    const isPinned = given.pinned.has(index)
    let from = placing.start[index]!
    return unit.steps.map((step, at): DatedStep => {
      const start = at === 0 ? from : table.next(from)
      const isLast = at === unit.steps.length - 1
      const finish = isLast ? placing.finish[index]! : table.add(start, step.hours / people)
      from = finish
      const float = isLast ? calm.between(finish, latest[index]!) : 0
      return {
        step,
        crew: plan.crews[unit.crew]!.id,
        people,
        start: start as Instant,
        finish: finish as Instant,
        ready: (isLast ? placing.ready[index]! : finish) as Instant,
        latest: (isLast ? latest[index]! : finish) as Instant,
        float,
        heldBy: at > 0 ? unit.steps[at - 1]!.key : heldBy(plan, placing, index),
        behind: at > 0 ? unit.steps[at - 1]!.key : behind(plan, cause),
        because: isPinned
          ? `as reported on ${clockAt(start as Instant, zone).date}`
          : at > 0
            ? `follows at the same doorway: ${unit.steps[at - 1]!.title}`
            : given.pinned.size > 0 && unit.work && cause.kind === "opening"
              ? "still to do: goes on after the last day reported"
              : reasonOf(unit, cause, plan, delay),
        ...(unit.limits & limit.fumes && step.fumes ? { doneBy: aired } : {}),
      }
    })
  })
  return dated.sort((a, b) => a.start - b.start || a.finish - b.finish)
}

/** What the calendar alone put off: loud work, or fumes too near to bedtime. */
function delayOf(
  { tables }: Placeable,
  { work, limits }: Unit,
  { from, start, aired }: { from: number; start: number; aired: string },
): Delay | null {
  const calm = tables[0]!.next(from)
  if (!work || calm >= start) return null
  const isFumes = (limits & limit.fumes) > 0 && tables[limits & ~limit.loud]!.next(from) > calm
  return isFumes ? { kind: "fumes", aired } : { kind: "loud" }
}

function heldBy(plan: UnitPlan, placing: Placing, index: number): string | null {
  const cause = placing.cause[index]!
  const first = "before" in cause ? cause.before : cause
  return first.kind === "crew" ? null : behind(plan, first)
}

function behind(plan: UnitPlan, cause: Cause): string | null {
  if ("before" in cause) return behind(plan, cause.before)
  if (!("unit" in cause)) return null
  const { steps } = plan.units[cause.unit]!
  return steps[steps.length - 1]!.key
}

function boundOf(given: Placeable, chains: Chains, zone: string): Omit<FinishBound, "proven"> {
  const least = leastFinish(given, chains)
  return { finish: clockAt(least.finish as Instant, zone).date, by: forcedBy(least, given.plan) }
}

function forcedBy({ by }: LeastFinish, plan: UnitPlan): string {
  if (by.kind === "crew") {
    const crew: Crew = plan.crews[by.crew]!
    return `the work of the ${crew.name.toLowerCase()} alone`
  }
  const title = (unit: number) => {
    const step = plan.units[unit]!.steps[0]!
    return step.room ? `${step.title} (${step.room})` : step.title
  }
  if (by.kind === "turns")
    return `the steps up to ${title(by.unit)}, each crew and each room taking one after the other`
  const { units } = by
  return units.length === 1
    ? title(units[0]!)
    : `the chain of ${units.length} steps from ${title(units[0]!)} to ${title(units[units.length - 1]!)}`
}

function labourOf(steps: readonly DatedStep[]): Map<string, number> {
  const sum = new Map<string, number>()
  for (const { crew, step } of steps) sum.set(crew, (sum.get(crew) ?? 0) + step.hours)
  return sum
}

function relaxedFinding(plan: UnitPlan, index: number): Finding {
  const unit = plan.units[index]!
  const { title, room } = unit.steps[0]!
  const gate = unit.steps[unit.steps.length - 1]!.gate
  const isStair = unit.steps[0]!.stage === "nosings"
  const why = unit.oneDay
    ? `${unit.steps.map((step) => step.title).join(" → ")}: more work than one day holds, and ${isStair ? "a stair that people go to bed by must be whole" : "no doorway may stand open"} in the evening.`
    : `${title} → ${gate?.process ?? "dry"} → not ready before bedtime → people who sleep behind ${room} cannot get to bed.`
  return {
    code: !unit.oneDay ? "stair-wet-at-night" : isStair ? "stair-day-too-long" : "door-day-too-long",
    severity: "error",
    at: { file: "programme.yaml", path: [] },
    message: why,
    mend: unit.oneDay
      ? "More people in the crew, shorter quiet hours, or prepare the leaf beforehand."
      : "Do every other tread or half the floor at a time, use what dries by the evening, or do it while the house is empty.",
  }
}

/** A warning for each hold that decides when a step begins. */
function heldFindings({ units }: UnitPlan, { cause }: Placing): Finding[] {
  return units.flatMap((unit, index): Finding[] => {
    const why = cause[index]!
    const isHeld = (each: Cause): boolean => ("before" in each ? isHeld(each.before) : each.kind === "hold")
    if (!unit.hold || !isHeld(why)) return []
    const { title, room } = unit.steps[0]!
    return [
      {
        code: "held-by-what-is-not-there",
        severity: "warning",
        at: unit.hold.at,
        message: `${title}${room ? ` (${room})` : ""} cannot begin before ${dayText(unit.hold.from)}: ${unit.hold.because}.`,
        mend: "Order or choose sooner, take what is in stock, or let it begin then.",
      },
    ]
  })
}

function ringFinding(ring: readonly string[], steps: readonly Step[]): Finding {
  const titles = ring.map((key) => {
    const step = steps.find((each) => each.key === key)
    return step ? `${step.title}${step.room ? ` (${step.room})` : ""}` : key
  })
  return {
    code: "programme-ring",
    severity: "error",
    at: { file: "programme.yaml", path: [] },
    message: `These steps wait for one another in a ring: ${titles.join(" → ")} → ${titles[0]}.`,
    mend: "One of them must be allowed to start without the one before it.",
  }
}
