import { Fault } from "../fault.ts"
import type { IsoDate } from "../units.ts"

/** Days of the week, Monday first, as they are keyed in a working week. */
export const WEEKDAYS = [
  "monday",
  "tuesday",
  "wednesday",
  "thursday",
  "friday",
  "saturday",
  "sunday",
] as const
/** One day of the week. */
export type Weekday = (typeof WEEKDAYS)[number]

const DAY_MS = 86_400_000

/** True if text is a day of the Gregorian calendar written `YYYY-MM-DD` (2026-02-29 is not). */
export function isIsoDate(text: string): text is IsoDate {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false
  const day = new Date(`${text}T00:00:00Z`)
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text)
}

/** A date from year, month 1 to 12 and day of the month; a day beyond the month's end runs on into the next. */
export function isoDate(year: number, month: number, day: number): IsoDate {
  return dateOf(Date.UTC(year, month - 1, day) / DAY_MS)
}

/** The day of the week a date falls on. */
export function weekday(date: IsoDate): Weekday {
  const monday = (((dayNumber(date) + 3) % 7) + 7) % 7
  return WEEKDAYS[monday]!
}

/** The date a whole number of days later (earlier if negative). */
export function addDays(date: IsoDate, days: number): IsoDate {
  return dateOf(dayNumber(date) + days)
}

/** Days from one date to another: positive if `to` is later. */
export function diffDays(from: IsoDate, to: IsoDate): number {
  return dayNumber(to) - dayNumber(from)
}

/** Every date from the first to the last, both included; none if the last is earlier. */
export function datesBetween(first: IsoDate, last: IsoDate): IsoDate[] {
  const count = Math.max(0, diffDays(first, last) + 1)
  return Array.from({ length: count }, (_, index) => addDays(first, index))
}

/** The year of a date. */
export function yearOf(date: IsoDate): number {
  return Number(date.slice(0, 4))
}

/** Monday of the week a date falls in. */
export function mondayOf(date: IsoDate): IsoDate {
  return addDays(date, -WEEKDAYS.indexOf(weekday(date)))
}

function dayNumber(date: IsoDate): number {
  const [year = 0, month = 0, day = 0] = date.split("-").map(Number)
  const number = Date.UTC(year, month - 1, day) / DAY_MS
  if (Number.isNaN(number)) throw new Fault(`"${date}" is no date`)
  return number
}

function dateOf(number: number): IsoDate {
  return new Date(number * DAY_MS).toISOString().slice(0, 10)
}
