import { Temporal } from "temporal-polyfill"
import { Fault } from "../fault.ts"
import type { IsoDate } from "../units.ts"

declare const instantMark: unique symbol
declare const elapsedMark: unique symbol
declare const workingMark: unique symbol

/** A moment, the same everywhere: milliseconds since 1970 in universal time. Wall-clock time needs a zone. */
export type Instant = number & { readonly [instantMark]: true }
/** Hours that run through nights, weekends and clock changes (drying, cure); never mixed up with working hours. */
export type ElapsedTime = number & { readonly [elapsedMark]: true }
/** Hours of work inside a working calendar; never mixed up with elapsed hours. */
export type WorkingTime = number & { readonly [workingMark]: true }

const HOUR_MS = 3_600_000

/** A count of hours marked as elapsed time. */
export function elapsed(hours: number): ElapsedTime {
  return hours as ElapsedTime
}

/** A count of hours marked as working time. */
export function working(hours: number): WorkingTime {
  return hours as WorkingTime
}

/**
 * The instant at which the clock of a zone shows a date and time.
 * Where the clock jumps over that time, the instant as if it had not jumped; where it shows it twice, the first.
 * @param time `HH:MM`, 24 hours; `24:00` is the end of that day
 * @param zone e.g. `Europe/London`
 */
export function instantAt(date: IsoDate, time: string, zone: string): Instant {
  const match = /^(\d{2}):(\d{2})$/.exec(time)
  if (!match) throw new Fault(`"${time}" is no time of day`)
  const [hours, minutes] = [Number(match[1]), Number(match[2])]
  const day = Temporal.PlainDate.from(date).add({ days: Math.floor(hours / 24) })
  const zoned = day.toZonedDateTime({ timeZone: zone, plainTime: { hour: hours % 24, minute: minutes } })
  return zoned.epochMilliseconds as Instant
}

/** What the clock of a zone shows at an instant: date and `HH:MM` (seconds dropped). */
export function clockAt(instant: Instant, zone: string): { date: IsoDate; time: string } {
  const zoned = Temporal.Instant.fromEpochMilliseconds(instant).toZonedDateTimeISO(zone)
  return {
    date: zoned.toPlainDate().toString(),
    time: zoned.toPlainTime().toString({ smallestUnit: "minute" }),
  }
}

/** An instant as text with its offset from universal time, e.g. `2026-03-29T10:00+01:00`. */
export function instantText(instant: Instant, zone: string): string {
  const zoned = Temporal.Instant.fromEpochMilliseconds(instant).toZonedDateTimeISO(zone)
  return zoned.toString({ smallestUnit: "minute", timeZoneName: "never" })
}

/** The instant that many elapsed hours later (rounded to whole milliseconds). */
export function addElapsed(start: Instant, hours: ElapsedTime): Instant {
  return Math.round(start + hours * HOUR_MS) as Instant
}

/** Elapsed hours from one instant to another; negative if `to` is earlier. */
export function elapsedBetween(from: Instant, to: Instant): ElapsedTime {
  return elapsed((to - from) / HOUR_MS)
}

/**
 * What the clock of a zone shows after that many elapsed hours: 24 h from 16:00 on the day before
 * the clocks go forward ends at 17:00.
 */
export function clockAfter(
  start: { date: IsoDate; time: string },
  hours: ElapsedTime,
  zone: string,
): { date: IsoDate; time: string } {
  return clockAt(addElapsed(instantAt(start.date, start.time, zone), hours), zone)
}
