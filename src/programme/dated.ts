import type { ProgrammeFile } from "../intake/schema/programme.ts"
import { addDays, yearOf } from "../kernels/calendar/dates.ts"
import { ENGLAND_AND_WALES, holidayDates } from "../kernels/calendar/holidays.ts"
import {
  addElapsed,
  clockAt,
  elapsed,
  type Instant,
  instantAt,
  working,
} from "../kernels/calendar/instant.ts"
import {
  addWorking,
  isWorkingDay,
  nextWorkingInstant,
  type WorkCalendar,
} from "../kernels/calendar/work-calendar.ts"
import type { Finding } from "../kernels/finding.ts"
import { findCycle } from "../kernels/network/activity.ts"
import type { Room } from "../survey/room.ts"
import { stageRank } from "../trades/stages.ts"
import type { Step } from "../trades/trade.ts"
import { waitsFor } from "./house-rules.ts"
import type { Crew, DatedStep, Programme, Visit } from "./programme.ts"
import { weekOf } from "./quiet.ts"

/** Years of public holidays kept ready after the start of a job. */
const yearsAhead = 3

/**
 * The dated sequence: each step as early as its gates, its crew and the calendar allow, taken stage by stage and room by
 * room, so that a crew does the same kind of work through the rooms in one go. A crew does one step at a time.
 * @returns steps in order of start; a ring of requirements, a trade without a crew, or visits over the limit as findings
 */
export function datedProgramme(
  steps: readonly Step[],
  rooms: readonly Room[],
  file: ProgrammeFile,
  zone: string,
): Programme {
  const calendar = calendarOf(file, zone, false)
  const noisy = calendarOf(file, zone, true)
  const waits = waitsFor(steps, rooms)
  const ring = findCycle(
    steps.map((step) => ({ id: step.key, duration: 0, after: linksOf(waits.get(step.key) ?? []) })),
  )
  if (ring) return { ...empty(file, zone, calendar), findings: [ringFinding(ring, steps)] }
  const dated = inTime({ steps, rooms, file, waits, calendars: { calm: calendar, noisy }, zone })
  const visits = visitsOf(dated.steps, file.crews, calendar, zone)
  const last = dated.steps.reduce((latest, each) => Math.max(latest, each.finish), 0)
  return {
    ...empty(file, zone, calendar),
    steps: dated.steps,
    visits,
    finish: last > 0 ? clockAt(last as Instant, zone).date : file.start,
    labour: labourOf(dated.steps),
    findings: [...dated.findings, ...visitFindings(visits, file.crews)],
  }
}

function empty(file: ProgrammeFile, zone: string, calendar: WorkCalendar): Programme {
  return {
    zone,
    calendar,
    crews: file.crews,
    steps: [],
    visits: [],
    start: file.start,
    finish: file.start,
    labour: new Map(),
    findings: [],
  }
}

function calendarOf(file: ProgrammeFile, zone: string, noisy: boolean): WorkCalendar {
  const year = yearOf(file.start)
  const holidays =
    file.holidays === "none" ? new Set<string>() : holidayDates(year, year + yearsAhead, ENGLAND_AND_WALES)
  return { zone, week: weekOf(file, noisy), holidays, closures: file.closed, extra: [] }
}

interface Timing {
  steps: readonly Step[]
  rooms: readonly Room[]
  file: ProgrammeFile
  waits: Map<string, string[]>
  calendars: { calm: WorkCalendar; noisy: WorkCalendar }
  zone: string
}

function inTime({ steps, rooms, file, waits, calendars, zone }: Timing): {
  steps: DatedStep[]
  findings: Finding[]
} {
  const done = new Map<string, DatedStep>()
  const free = new Map<string, Instant>()
  const opening = instantAt(file.start, file.hours[0]!.from, zone)
  const findings: Finding[] = []
  for (const step of inTurn(steps, rooms, waits)) {
    const crew = file.crews.find((each) => each.trades.includes(step.trade))
    if (!crew) {
      findings.push(noCrew(step.trade))
      continue
    }
    const calendar = step.noisy ? calendars.noisy : calendars.calm
    const held = (waits.get(step.key) ?? []).flatMap((key) => done.get(key) ?? [])
    const latest = held.reduce<DatedStep | null>(
      (late, each) => (!late || each.ready > late.ready ? each : late),
      null,
    )
    const crewFree = free.get(crew.id) ?? opening
    const from = Math.max(opening, crewFree, latest?.ready ?? 0) as Instant
    const start = nextWorkingInstant(from, calendar)
    const finish = addWorking(start, working(step.hours / crew.people), calendar)
    const ready = step.gate ? addElapsed(finish, elapsed(step.gate.hours)) : finish
    const heldBy = latest && latest.ready >= crewFree ? latest.step.key : null
    free.set(crew.id, finish)
    done.set(step.key, {
      step,
      crew: crew.id,
      start,
      finish,
      ready,
      heldBy,
      because: reason({ step, latest, crewFree, from, start, crew }),
    })
  }
  const dated = [...done.values()].sort((a, b) => a.start - b.start || a.finish - b.finish)
  return {
    steps: dated,
    findings: findings.filter(
      (each, index) => findings.findIndex((other) => other.message === each.message) === index,
    ),
  }
}

function reason(of: {
  step: Step
  latest: DatedStep | null
  crewFree: Instant
  from: Instant
  start: Instant
  crew: Crew
}): string {
  const quiet = of.step.noisy && of.start > of.from ? ", then for quiet hours or the next working day" : ""
  if (of.latest && of.latest.ready >= of.crewFree) {
    const { step } = of.latest
    const dry = step.gate ? ` and ${step.gate.process}` : ""
    return `waits for: ${step.title}${step.room ? ` (${step.room})` : ""}${dry}${quiet}`
  }
  return `waits for the ${of.crew.name.toLowerCase()}, busy elsewhere until then${quiet}`
}

/** Steps in the order they are placed: stage by stage, room by room, none before what it waits for. */
function inTurn(steps: readonly Step[], rooms: readonly Room[], waits: Map<string, string[]>): Step[] {
  const roomRank = new Map(rooms.map((room, index) => [room.id, index]))
  const ranked = [...steps].sort(
    (a, b) =>
      stageRank(a.stage) - stageRank(b.stage) ||
      (roomRank.get(a.room ?? "") ?? rooms.length) - (roomRank.get(b.room ?? "") ?? rooms.length),
  )
  const placed = new Set<string>()
  const order: Step[] = []
  const byKey = new Map(ranked.map((step) => [step.key, step]))
  const place = (step: Step): void => {
    if (placed.has(step.key)) return
    placed.add(step.key)
    for (const key of waits.get(step.key) ?? []) place(byKey.get(key)!)
    order.push(step)
  }
  for (const step of ranked) place(step)
  return order
}

function linksOf(keys: readonly string[]): { from: string }[] {
  return keys.map((from) => ({ from }))
}

function visitsOf(
  steps: readonly DatedStep[],
  crews: readonly Crew[],
  calendar: WorkCalendar,
  zone: string,
): Visit[] {
  return crews.flatMap((crew) => {
    const visits: Visit[] = []
    for (const each of steps.filter((step) => step.crew === crew.id)) {
      const from = clockAt(each.start, zone).date
      const to = clockAt(each.finish, zone).date
      const visit = visits[visits.length - 1]
      if (visit && from <= nextWorkingDay(visit.to, calendar)) {
        visit.keys.push(each.step.key)
        if (to > visit.to) visit.to = to
      } else visits.push({ crew: crew.id, from, to, keys: [each.step.key] })
    }
    return visits
  })
}

function nextWorkingDay(date: string, calendar: WorkCalendar): string {
  let day = addDays(date, 1)
  while (!isWorkingDay(day, calendar)) day = addDays(day, 1)
  return day
}

function labourOf(steps: readonly DatedStep[]): Map<string, number> {
  const sum = new Map<string, number>()
  for (const { crew, step } of steps) sum.set(crew, (sum.get(crew) ?? 0) + step.hours)
  return sum
}

function visitFindings(visits: readonly Visit[], crews: readonly Crew[]): Finding[] {
  return crews.flatMap((crew, index): Finding[] => {
    const count = visits.filter((visit) => visit.crew === crew.id).length
    if (!crew.visits || count <= crew.visits) return []
    return [
      {
        code: "too-many-visits",
        severity: "warning",
        at: { file: "programme.yaml", path: ["crews", index, "visits"] },
        message: `${crew.name} would come ${count} times; the job allows ${crew.visits} visits.`,
        mend: "Allow more visits, or let fewer rooms go on at once.",
      },
    ]
  })
}

function noCrew(trade: string): Finding {
  return {
    code: "trade-without-crew",
    severity: "error",
    at: { file: "programme.yaml", path: ["crews"] },
    message: `No crew does the trade "${trade}", but rooms have work for it.`,
    mend: `Add "${trade}" to the trades of a crew.`,
  }
}

function ringFinding(ring: readonly string[], steps: readonly Step[]): Finding {
  const titles = ring.map((key) => steps.find((step) => step.key === key)?.title ?? key)
  return {
    code: "programme-ring",
    severity: "error",
    at: { file: "programme.yaml", path: [] },
    message: `These steps wait for one another in a ring: ${titles.join(" → ")} → ${titles[0]}.`,
    mend: "One of them must be allowed to start without the one before it.",
  }
}
