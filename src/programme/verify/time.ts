import { Temporal } from "temporal-polyfill"
import type { ProgrammeFile } from "../../intake/schema/programme.ts"
import { ENGLAND_AND_WALES, holidaysOf } from "../../kernels/calendar/holidays.ts"
import type { Step } from "../../trades/trade.ts"
import type { Checked, DatedStep } from "../programme.ts"
import { lived } from "./reach.ts"

const minuteMs = 60_000
const hourMs = 3_600_000
/** Whole milliseconds are kept; shares of hours may differ by as much. */
const tolerance = 2

/** Each step once, its hours worked in working time (loud work in no quiet hour, solvent never too near to the bedtime of those who sleep on the storey), its people there, its gate kept. */
export function timeBroken({ programme, steps, site, file, rules, holds = [] }: Checked): string[] {
  const found: string[] = []
  const spans = spansIn(file, programme.zone, rules.value("solvent-before-bed"))
  const isLived = lived(site)
  const beds = site.rooms.filter(({ id, use }) => use === "bedroom" && isLived(id))
  const smells = ({ fumes, room }: Step) => {
    const storey = site.rooms.find(({ id }) => id === room)?.storey.id
    return fumes === true && beds.some((bed) => room === null || bed.storey.id === storey)
  }
  const dated = new Map(programme.steps.map((each) => [each.step.key, each]))
  if (dated.size !== programme.steps.length) found.push("a step is dated twice")
  for (const step of steps) {
    const isManned = file.crews.some((crew) => crew.trades.includes(step.trade))
    if (isManned !== dated.has(step.key)) found.push(`${step.key}: ${isManned ? "not dated" : "has no crew"}`)
  }
  for (const each of programme.steps) {
    const gate = (each.step.gate?.hours ?? 0) * hourMs
    if (Math.abs(each.ready - each.finish - gate) > tolerance) found.push(`${each.step.key}: gate not kept`)
    if (!isReported(each, file))
      found.push(...hoursBroken(each, { spansOn: spans, zone: programme.zone, smells: smells(each.step) }))
  }
  for (const { key, from, because } of holds) {
    const each = dated.get(key)
    if (!each || isReported(each, file)) continue
    const day = Temporal.Instant.fromEpochMilliseconds(each.start).toZonedDateTimeISO(programme.zone)
    if (day.toPlainDate().toString() < from) found.push(`${key}: begins before ${from}: ${because}`)
  }
  return [...found, ...crewsBroken(programme.steps, file)]
}

/** True for a step with an actual day: it is where it was. */
export function isReported({ step }: DatedStep, file: ProgrammeFile): boolean {
  const door = step.key.split("/").slice(0, 2).join("/")
  return file.progress.some(
    (each) => each.step === step.key || (step.trade === "doors" && each.step.startsWith(`${door}/`)),
  )
}

function hoursBroken(
  each: DatedStep,
  { spansOn, zone, smells }: { spansOn: Spans; zone: string; smells: boolean },
): string[] {
  const { step, start, finish, people } = each
  const wanted = (step.hours / people) * hourMs
  if (wanted === 0) return finish === start ? [] : [`${step.key}: no work, yet it takes time`]
  let worked = 0
  let begins = false
  let ends = false
  let day = Temporal.Instant.fromEpochMilliseconds(start).toZonedDateTimeISO(zone).toPlainDate()
  const last = Temporal.Instant.fromEpochMilliseconds(finish).toZonedDateTimeISO(zone).toPlainDate()
  for (; Temporal.PlainDate.compare(day, last) <= 0; day = day.add({ days: 1 })) {
    for (const [from, to] of spansOn(day, { loud: step.noisy, smells })) {
      worked += Math.max(0, Math.min(to, finish) - Math.max(from, start))
      begins ||= from <= start && start < to
      ends ||= from < finish && finish <= to
    }
  }
  const found: string[] = []
  if (!begins || !ends)
    found.push(
      `${step.key}: begins or ends outside working time${smells ? ", or puts solvent on too near to bedtime" : ""}`,
    )
  if (Math.abs(worked - wanted) > tolerance)
    found.push(`${step.key}: ${worked / hourMs} h instead of ${wanted / hourMs}`)
  return found
}

const holidays = new Map<number, string[]>()

function holidayIn(year: number, date: string): boolean {
  const found = holidays.get(year) ?? holidaysOf(year, ENGLAND_AND_WALES).map((each) => each.date)
  holidays.set(year, found)
  return found.includes(date)
}

/** Every minute of a day as a clock shows it. */
const clocks = Array.from({ length: 24 * 60 }, (_, minute) =>
  [Math.floor(minute / 60), minute % 60].map((part) => String(part).padStart(2, "0")).join(":"),
)

interface Kind {
  loud: boolean
  /** Gives off solvent where people sleep. */
  smells: boolean
}

type Spans = (day: Temporal.PlainDate, kind: Kind) => [number, number][]

function spansIn(file: ProgrammeFile, zone: string, airing: number): Spans {
  const known = new Map<string, [number, number][]>()
  return (day, kind) => {
    const name = `${day.toString()} ${kind.loud} ${kind.smells}`
    const found = known.get(name) ?? spansOf(day, { file, ...kind, zone, airing })
    known.set(name, found)
    return found
  }
}

/** Working stretches of a day, read from the file minute by minute (no clock changes within working time). */
function spansOf(
  day: Temporal.PlainDate,
  { file, loud, smells, zone, airing }: Kind & { file: ProgrammeFile; zone: string; airing: number },
): [number, number][] {
  const date = day.toString()
  const name = (["mon", "tue", "wed", "thu", "fri", "sat", "sun"] as const)[day.dayOfWeek - 1]!
  const free =
    !file.days.includes(name) ||
    file.closed.some((closed) => closed.from <= date && date <= closed.to) ||
    (file.holidays !== "none" && holidayIn(day.year, date))
  if (free) return []
  const quiet = loud ? file.quiet.filter((each) => each.days.includes(name)) : []
  const bed = clocks.indexOf(file.bedtime)
  const tooNear = (minute: number) => {
    const until = (bed - minute + clocks.length) % clocks.length
    const isAbed = bed >= clocks.length / 2 && minute >= bed
    return smells && (isAbed || until <= airing * 60)
  }
  const stretches: [number, number][] = []
  let lastMinute = -2
  for (const [minute, clock] of clocks.entries()) {
    const within = (span: { from: string; to: string }) => span.from <= clock && clock < span.to
    if (!file.hours.some(within) || quiet.some(within) || tooNear(minute)) continue
    const before = stretches[stretches.length - 1]
    if (before && lastMinute === minute - 1) before[1] += minuteMs
    else {
      const from = day.toZonedDateTime({ timeZone: zone, plainTime: clock }).epochMilliseconds
      stretches.push([from, from + minuteMs])
    }
    lastMinute = minute
  }
  return stretches
}

function crewsBroken(steps: readonly DatedStep[], file: ProgrammeFile): string[] {
  const found: string[] = []
  for (const crew of file.crews) {
    const own = steps.filter((each) => each.crew === crew.id)
    for (const each of own) {
      if (!crew.trades.includes(each.step.trade)) found.push(`${each.step.key}: not this crew's trade`)
      if (each.people < 1 || each.people > crew.people) found.push(`${each.step.key}: ${each.people} people`)
      const busy = own.filter(
        (other) => other.start <= each.start && each.start < other.finish && !isReported(other, file),
      )
      const people = busy.reduce((sum, other) => sum + other.people, 0)
      if (people > crew.people)
        found.push(`${each.step.key}: ${people} of ${crew.people} ${crew.name} at once`)
    }
  }
  return found
}
