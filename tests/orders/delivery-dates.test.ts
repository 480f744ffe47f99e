import { describe, expect, it } from "vitest"
import { addDays, diffDays } from "../../src/kernels/calendar/dates.ts"
import { isWorkingDay } from "../../src/kernels/calendar/work-calendar.ts"
import {
  dropDates,
  orderBy,
  supplierOf,
  type Window,
  workingDayUpTo,
} from "../../src/orders/delivery-dates.ts"
import { datedOf, programmeOf, stepOf } from "../fixtures/programme.ts"
import { surveyed } from "../fixtures/rooms.ts"

/** Monday to Friday with the public holidays of England and Wales, and closed on 8 and 9 April 2027. */
const { calendar } = datedOf(
  [stepOf({ key: "a" })],
  [surveyed()],
  programmeOf({ closed: [{ from: "2027-04-08", to: "2027-04-09", why: "stock taking" }] }),
)
const window = (earliest: string, latest: string): Window => ({ earliest, latest })
const anyDay = { supplier: "s", leadIn: "calendar" as const, collect: false }

/**
 * Worked by hand on the calendar of spring 2027. Public holidays: Good Friday 26 March, Easter Monday 29 March, 3 May (gov.uk, bank
 * holidays). Weekends 20/21 and 27/28 March, 3/4 and 10/11 April, 1/2 May.
 */
describe("the last day to order", () => {
  it.each([
    [
      "2027-04-01",
      5,
      "calendar",
      "2027-03-25",
      "Thu 1 April, 5 days back is Sat 27 March: over Good Friday to Thu 25",
    ],
    [
      "2027-04-01",
      5,
      "working",
      "2027-03-23",
      "Wed 31, Tue 30, (29, 28, 27, 26 free) Thu 25, Wed 24, Tue 23",
    ],
    ["2027-04-12", 2, "working", "2027-04-06", "Mon 12: weekend and two closed days before it, Wed 7, Tue 6"],
    ["2027-04-12", 2, "calendar", "2027-04-07", "Sat 10 is free, Fri 9 and Thu 8 closed: Wed 7"],
    [
      "2027-05-04",
      1,
      "working",
      "2027-04-30",
      "Tue 4 May: the holiday on Mon 3 and the weekend do not count",
    ],
    ["2027-05-04", 0, "calendar", "2027-05-04", "no lead time: the day itself"],
  ] as const)(
    "for goods that come on %s with a lead of %i %s days is %s (%s)",
    (comes, lead, leadIn, by, _why) => {
      expect(orderBy(comes, lead, { leadIn }, calendar)).toBe(by)
    },
  )

  it("counts back from the last working day where the day itself is free", () => {
    expect(workingDayUpTo("2027-03-29", calendar)).toBe("2027-03-25")
    expect(workingDayUpTo("2027-04-01", calendar)).toBe("2027-04-01")
  })
})

describe("drops", () => {
  it("join what may come together, on the last day of the first that must come", () => {
    const windows = [
      window("2027-03-15", "2027-03-24"),
      window("2027-03-18", "2027-04-06"),
      window("2027-04-05", "2027-04-20"),
    ]
    expect(dropDates(windows, {}, calendar)).toEqual(["2027-03-24", "2027-03-24", "2027-04-20"])
  })

  it("come only on a supplier's days: Thursday 25 March, since Tuesday 30 is too late and Friday 26 is a holiday", () => {
    expect(dropDates([window("2027-03-22", "2027-03-29")], { days: ["tue", "thu"] }, calendar)).toEqual([
      "2027-03-25",
    ])
  })

  it("come on the last working day of a window in which the supplier never comes", () => {
    expect(dropDates([window("2027-03-31", "2027-04-05")], { days: ["tue"] }, calendar)).toEqual([
      "2027-04-05",
    ])
  })

  it("are as few as can be, each in its window: against every choice of days, in windows made at random", () => {
    let state = 7
    const next = (below: number) => {
      state = (state * 48271) % 2147483647
      return state % below
    }
    for (let trial = 0; trial < 60; trial++) {
      const windows = Array.from({ length: 2 + next(4) }, () => {
        const earliest = addDays("2027-03-10", next(20))
        return window(earliest, addDays(earliest, 4 + next(10)))
      })
      const dates = dropDates(windows, {}, calendar)
      windows.forEach(({ earliest, latest }, index) => {
        expect(earliest <= dates[index]! && dates[index]! <= latest).toBe(true)
        expect(isWorkingDay(dates[index]!, calendar)).toBe(true)
      })
      expect(new Set(dates).size).toBe(fewest(windows))
    }
  })

  /** The fewest days that meet every window, by trying all sets of working days of growing size. */
  function fewest(windows: Window[]): number {
    const first = windows.map((each) => each.earliest).sort()[0]!
    const last = windows
      .map((each) => each.latest)
      .sort()
      .reverse()[0]!
    const days = Array.from({ length: diffDays(first, last) + 1 }, (_, index) =>
      addDays(first, index),
    ).filter((day) => isWorkingDay(day, calendar))
    const meets = (chosen: string[]) =>
      windows.every(({ earliest, latest }) => chosen.some((day) => earliest <= day && day <= latest))
    const some = (count: number, from: number, chosen: string[]): boolean =>
      count === 0
        ? meets(chosen)
        : days.slice(from).some((day, index) => some(count - 1, from + index + 1, [...chosen, day]))
    for (let count = 1; ; count++) if (some(count, 0, [])) return count
  }
})

describe("a supplier of whom nothing is written", () => {
  it("delivers on any working day, with lead times in calendar days", () => {
    expect(supplierOf("s", [])).toEqual(anyDay)
    const own = { ...anyDay, collect: true }
    expect(supplierOf("s", [own])).toBe(own)
  })
})
