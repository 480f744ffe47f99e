import { Fault } from "../fault.ts"
import type { IsoDate } from "../units.ts"
import type { Weekday } from "./dates.ts"
import { addDays, weekday } from "./dates.ts"
import type { Instant, WorkingTime } from "./instant.ts"
import { clockAt, instantAt, working } from "./instant.ts"

/** When someone works, by the clock of a zone. */
export interface WorkCalendar {
  /** e.g. `Europe/London`. */
  zone: string
  /** Working spans of each day of the week in order, `["08:00-12:30", "13:00-16:30"]`; a day left out is free. */
  week: Partial<Record<Weekday, readonly string[]>>
  /** Public holidays, on the day they are kept. */
  holidays: ReadonlySet<IsoDate>
  /** Days closed, first and last included. */
  closures: readonly { from: IsoDate; to: IsoDate }[]
  /** Single days with spans of their own, which stand before week, holidays and closures; no spans closes the day. */
  extra: readonly { date: IsoDate; spans: readonly string[] }[]
}

/** A stretch of work without a break. */
export interface Span {
  start: Instant
  end: Instant
}

const HOUR_MS = 3_600_000
/** A calendar without a working hour in this many days on end has none at all. */
const HORIZON_DAYS = 1100

/** The working stretches of one date, in order; none on a free day. Asked often, so kept for each calendar object. */
export function spansOn(date: IsoDate, calendar: WorkCalendar): readonly Span[] {
  let days = known.get(calendar)
  if (!days) {
    days = new Map()
    known.set(calendar, days)
  }
  let spans = days.get(date)
  if (!spans) {
    spans = spanTexts(date, calendar).map((text) => spanOf(date, text, calendar.zone))
    days.set(date, spans)
  }
  return spans
}

/** True if any work is done on a date. */
export function isWorkingDay(date: IsoDate, calendar: WorkCalendar): boolean {
  return spansOn(date, calendar).length > 0
}

/** True if the calendar has any working time in the three years from a date. */
export function hasWorkingTime(from: IsoDate, calendar: WorkCalendar): boolean {
  for (let day = 0; day < HORIZON_DAYS; day++) {
    if (isWorkingDay(addDays(from, day), calendar)) return true
  }
  return false
}

/** The first instant, not before the one given, at which work goes on. */
export function nextWorkingInstant(from: Instant, calendar: WorkCalendar): Instant {
  const first = spansFrom(from, calendar).next().value
  if (!first) throw new Fault("the calendar has no working time")
  return first.start
}

/**
 * The instant at which a crew starting then has worked that long: breaks, nights and free days do not count.
 * Work that fills a span ends at its end, not at the next start; no work at all ends where it starts.
 * @throws `Fault` if the calendar has no working time (ask `hasWorkingTime` first)
 */
export function addWorking(start: Instant, hours: WorkingTime, calendar: WorkCalendar): Instant {
  let left = Math.round(hours * HOUR_MS)
  if (left <= 0) return start
  for (const span of spansFrom(start, calendar)) {
    if (left <= span.end - span.start) return (span.start + left) as Instant
    left -= span.end - span.start
  }
  throw new Fault("the calendar has no working time")
}

/** The instant from which a crew must start to have worked that long by `end`: the mirror of `addWorking`. */
export function subtractWorking(end: Instant, hours: WorkingTime, calendar: WorkCalendar): Instant {
  let left = Math.round(hours * HOUR_MS)
  if (left <= 0) return end
  const last = clockAt(end, calendar.zone).date
  for (let day = 1, free = 0; free < HORIZON_DAYS; day--, free++) {
    for (const span of [...spansOn(addDays(last, day), calendar)].reverse()) {
      const stop = Math.min(span.end, end)
      if (stop <= span.start) continue
      if (left <= stop - span.start) return (stop - left) as Instant
      left -= stop - span.start
      free = 0
    }
  }
  throw new Fault("the calendar has no working time")
}

/** Working hours between two instants; 0 if the second is not later. */
export function workingBetween(from: Instant, to: Instant, calendar: WorkCalendar): WorkingTime {
  let sum = 0
  for (const span of spansFrom(from, calendar)) {
    if (span.start >= to) break
    sum += Math.min(span.end, to) - span.start
  }
  return working(sum / HOUR_MS)
}

/**
 * The date that many working days after a date, the first working day after it counting as 1.
 * With 0 the date itself.
 */
export function addWorkingDays(date: IsoDate, days: number, calendar: WorkCalendar): IsoDate {
  const step = Math.sign(days)
  let day = date
  for (let left = Math.abs(days), free = 0; left > 0; ) {
    day = addDays(day, step)
    if (isWorkingDay(day, calendar)) {
      left--
      free = 0
    } else if (++free > HORIZON_DAYS) throw new Fault("the calendar has no working time")
  }
  return day
}

const known = new WeakMap<WorkCalendar, Map<IsoDate, readonly Span[]>>()

/** Working stretches from an instant on, the first cut to begin no earlier; ends when nothing comes in the horizon. */
function* spansFrom(from: Instant, calendar: WorkCalendar): Generator<Span, undefined> {
  let date = addDays(clockAt(from, calendar.zone).date, -1)
  for (let free = 0; free < HORIZON_DAYS; free++) {
    for (const span of spansOn(date, calendar)) {
      if (span.end <= from) continue
      yield { start: Math.max(span.start, from) as Instant, end: span.end }
      free = 0
    }
    date = addDays(date, 1)
  }
  return undefined
}

function spanTexts(date: IsoDate, calendar: WorkCalendar): readonly string[] {
  const extra = calendar.extra.find((day) => day.date === date)
  if (extra) return extra.spans
  const closed = calendar.closures.some(({ from, to }) => from <= date && date <= to)
  if (closed || calendar.holidays.has(date)) return []
  return calendar.week[weekday(date)] ?? []
}

/** A span ending at or before it starts, such as `22:00-06:00`, runs into the next day. */
function spanOf(date: IsoDate, text: string, zone: string): Span {
  const [start = "", end = ""] = text.split("-")
  const endDate = end <= start ? addDays(date, 1) : date
  return { start: instantAt(date, start, zone), end: instantAt(endDate, end, zone) }
}
