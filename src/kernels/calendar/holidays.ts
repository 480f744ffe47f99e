import type { IsoDate } from "../units.ts"
import type { Weekday } from "./dates.ts"
import { addDays, isoDate, WEEKDAYS, weekday } from "./dates.ts"

/** How a public holiday finds its day in each year. */
export type HolidayDay =
  | { kind: "fixed"; month: number; day: number }
  | { kind: "first" | "last"; weekday: Weekday; month: number }
  | { kind: "easter"; offset: number }

/** One public holiday of a region, as data: `substitute` moves it from a weekend to the next free weekday. */
export interface HolidayRule {
  name: string
  day: HolidayDay
  substitute: boolean
  source: string
}

/** A public holiday of one year, on the day it is kept. */
export interface Holiday {
  date: IsoDate
  name: string
  /** The day it would have fallen on, where another day is kept in its place. */
  inPlaceOf?: IsoDate
}

const ACT = "Banking and Financial Dealings Act 1971, Schedule 1"
const PROCLAMATION =
  "royal proclamation each year under the Banking and Financial Dealings Act 1971, section 1(3)"
const COMMON_LAW = "common law holiday, England and Wales"

/** Bank holidays of England and Wales by rule; one-off holidays of a single year are added as closures. */
export const ENGLAND_AND_WALES: readonly HolidayRule[] = [
  {
    name: "New Year's Day",
    day: { kind: "fixed", month: 1, day: 1 },
    substitute: true,
    source: PROCLAMATION,
  },
  { name: "Good Friday", day: { kind: "easter", offset: -2 }, substitute: false, source: COMMON_LAW },
  { name: "Easter Monday", day: { kind: "easter", offset: 1 }, substitute: false, source: ACT },
  {
    name: "Early May bank holiday",
    day: { kind: "first", weekday: "monday", month: 5 },
    substitute: false,
    source: PROCLAMATION,
  },
  {
    name: "Spring bank holiday",
    day: { kind: "last", weekday: "monday", month: 5 },
    substitute: false,
    source: ACT,
  },
  {
    name: "Summer bank holiday",
    day: { kind: "last", weekday: "monday", month: 8 },
    substitute: false,
    source: ACT,
  },
  { name: "Christmas Day", day: { kind: "fixed", month: 12, day: 25 }, substitute: true, source: COMMON_LAW },
  { name: "Boxing Day", day: { kind: "fixed", month: 12, day: 26 }, substitute: true, source: ACT },
]

/**
 * The public holidays kept in one year, in order of date.
 * A holiday with a substitute that falls on a weekend moves to the first weekday after it that is no holiday itself:
 * 25 and 26 December 2027 (Saturday and Sunday) are kept on Monday 27 and Tuesday 28.
 */
export function holidaysOf(year: number, rules: readonly HolidayRule[]): Holiday[] {
  const natural = rules.map((rule) => ({ rule, date: dayIn(year, rule.day) }))
  const taken = new Set(natural.filter(({ date }) => !isWeekend(date)).map(({ date }) => date))
  return natural
    .map(({ rule, date }): Holiday => {
      if (!rule.substitute || !isWeekend(date)) return { date, name: rule.name }
      const kept = nextFree(date, taken)
      taken.add(kept)
      return { date: kept, name: rule.name, inPlaceOf: date }
    })
    .sort((a, b) => (a.date < b.date ? -1 : 1))
}

/** The dates of all public holidays from one year to another, both included, for a working calendar. */
export function holidayDates(
  firstYear: number,
  lastYear: number,
  rules: readonly HolidayRule[],
): Set<IsoDate> {
  const dates = new Set<IsoDate>()
  for (let year = firstYear; year <= lastYear; year++) {
    for (const holiday of holidaysOf(year, rules)) dates.add(holiday.date)
  }
  return dates
}

/**
 * Easter Sunday in the Gregorian calendar.
 * The anonymous computus of 1876, as given by Meeus, Astronomical Algorithms, chapter 8; its divisors are the calendar's own cycles.
 */
export function easterSunday(year: number): IsoDate {
  const golden = year % 19
  const century = Math.floor(year / 100)
  const yearOfCentury = year % 100
  const moonShift = Math.floor((8 * century + 13) / 25)
  const epact = (19 * golden + century - Math.floor(century / 4) - moonShift + 15) % 30
  const toSunday =
    (32 + 2 * (century % 4) + 2 * Math.floor(yearOfCentury / 4) - epact - (yearOfCentury % 4)) % 7
  const late = Math.floor((golden + 11 * epact + 22 * toSunday) / 451)
  const days = epact + toSunday - 7 * late + 114
  return isoDate(year, Math.floor(days / 31), (days % 31) + 1)
}

function dayIn(year: number, day: HolidayDay): IsoDate {
  if (day.kind === "fixed") return isoDate(year, day.month, day.day)
  if (day.kind === "easter") return addDays(easterSunday(year), day.offset)
  const wanted = WEEKDAYS.indexOf(day.weekday)
  if (day.kind === "first") {
    const start = isoDate(year, day.month, 1)
    return addDays(start, (wanted - WEEKDAYS.indexOf(weekday(start)) + 7) % 7)
  }
  const end = isoDate(year, day.month + 1, 0)
  return addDays(end, -((WEEKDAYS.indexOf(weekday(end)) - wanted + 7) % 7))
}

function isWeekend(date: IsoDate): boolean {
  return ["saturday", "sunday"].includes(weekday(date))
}

function nextFree(date: IsoDate, taken: ReadonlySet<IsoDate>): IsoDate {
  let day = addDays(date, 1)
  while (isWeekend(day) || taken.has(day)) day = addDays(day, 1)
  return day
}
