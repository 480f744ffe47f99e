import { describe, expect, it } from "vitest"
import { addDays, datesBetween, isoDate } from "../../../src/kernels/calendar/dates.ts"
import { ENGLAND_AND_WALES, holidayDates } from "../../../src/kernels/calendar/holidays.ts"
import type { Instant } from "../../../src/kernels/calendar/instant.ts"
import { clockAt, instantAt, working } from "../../../src/kernels/calendar/instant.ts"
import type { WorkCalendar } from "../../../src/kernels/calendar/work-calendar.ts"
import {
  addWorking,
  addWorkingDays,
  hasWorkingTime,
  isWorkingDay,
  nextWorkingInstant,
  spansOn,
  subtractWorking,
  workingBetween,
} from "../../../src/kernels/calendar/work-calendar.ts"
import { DATE_ADDS, WORKING_DAYS } from "../../facts/calendar.ts"

const zone = "Europe/London"
const day = ["08:00-12:30", "13:00-16:30"]
const calendar: WorkCalendar = {
  zone,
  week: { monday: day, tuesday: day, wednesday: day, thursday: day, friday: day },
  holidays: holidayDates(2026, 2028, ENGLAND_AND_WALES),
  closures: [],
  extra: [],
}

function at(text: string): Instant {
  const [date = "", time = ""] = text.split("T")
  return instantAt(date, time, zone)
}

function clock(instant: Instant): string {
  const { date, time } = clockAt(instant, zone)
  return `${date}T${time}`
}

describe("working calendar", () => {
  it.each(WORKING_DAYS)("working days of $year by month ($source)", ({ year, months, total }) => {
    const counts = months.map((_, index) => {
      const dates = datesBetween(isoDate(year, index + 1, 1), isoDate(year, index + 2, 0))
      return dates.filter((date) => isWorkingDay(date, calendar)).length
    })
    expect(counts).toEqual(months)
    expect(counts.reduce((a, b) => a + b)).toBe(total)
  })

  it.each(DATE_ADDS)("$from plus $days working days is $to ($source)", ({ from, days, to }) => {
    expect(addWorkingDays(from, days, calendar)).toBe(to)
    expect(addWorkingDays(addDays(to, 1), -1, calendar)).toBe(to)
  })

  it("work runs through breaks, nights, weekends and holidays", () => {
    // Thursday 2 April 2026, 14:00: 2.5 h to 16:30; then Good Friday, weekend, Easter Monday; Tuesday 8 h; Wednesday 08:00 + 1.5 h
    expect(clock(addWorking(at("2026-04-02T14:00"), working(12), calendar))).toBe("2026-04-08T09:30")
    expect(clock(addWorking(at("2026-04-02T12:00"), working(1), calendar))).toBe("2026-04-02T13:30")
  })

  it("work that fills a span ends with it; no work ends where it starts", () => {
    expect(clock(addWorking(at("2026-06-01T08:00"), working(4.5), calendar))).toBe("2026-06-01T12:30")
    expect(clock(addWorking(at("2026-06-01T08:00"), working(8), calendar))).toBe("2026-06-01T16:30")
    expect(clock(addWorking(at("2026-06-06T10:00"), working(0), calendar))).toBe("2026-06-06T10:00")
  })

  it("the next working instant", () => {
    expect(clock(nextWorkingInstant(at("2026-06-01T12:45"), calendar))).toBe("2026-06-01T13:00")
    expect(clock(nextWorkingInstant(at("2026-06-05T16:30"), calendar))).toBe("2026-06-08T08:00")
    expect(clock(nextWorkingInstant(at("2026-06-05T09:10"), calendar))).toBe("2026-06-05T09:10")
  })

  it("counts working hours between instants, as a count hour by quarter hour does", () => {
    const from = at("2026-03-26T07:00")
    for (let quarters = 0; quarters < 14 * 96; quarters += 37) {
      const to = (from + quarters * 900_000) as Instant
      let counted = 0
      for (let t = from; t < to; t = (t + 900_000) as Instant) {
        const { date, time } = clockAt(t, zone)
        const works = (time >= "08:00" && time < "12:30") || (time >= "13:00" && time < "16:30")
        if (works && isWorkingDay(date, calendar)) counted += 0.25
      }
      expect(workingBetween(from, to, calendar)).toBe(counted)
    }
    expect(workingBetween(at("2026-06-02T08:00"), at("2026-06-01T08:00"), calendar)).toBe(0)
  })

  it("adding and counting, adding and taking away agree", () => {
    const start = at("2026-12-18T09:15")
    for (let hours = 0.25; hours < 120; hours += 3.75) {
      const end = addWorking(start, working(hours), calendar)
      expect(workingBetween(start, end, calendar)).toBe(hours)
      expect(clock(subtractWorking(end, working(hours), calendar))).toBe("2026-12-18T09:15")
    }
  })

  it("closures close, extra days open or change a day", () => {
    const shut: WorkCalendar = {
      ...calendar,
      closures: [{ from: "2026-06-01", to: "2026-06-03" }],
      extra: [
        { date: "2026-06-02", spans: ["10:00-11:00"] },
        { date: "2026-06-04", spans: [] },
        { date: "2026-06-06", spans: ["08:00-12:00"] },
      ],
    }
    const open = datesBetween("2026-06-01", "2026-06-07").filter((date) => isWorkingDay(date, shut))
    expect(open).toEqual(["2026-06-02", "2026-06-05", "2026-06-06"])
    expect(clock(addWorking(at("2026-06-01T08:00"), working(10), shut))).toBe("2026-06-06T09:00")
  })

  it("a night shift keeps its real length through a clock change", () => {
    const nights: WorkCalendar = { ...calendar, week: { saturday: ["22:00-06:00"] } }
    const [spring] = spansOn("2026-03-28", nights)
    const [autumn] = spansOn("2026-10-24", nights)
    const [summer] = spansOn("2026-06-06", nights)
    expect(
      [spring, autumn, summer].map((span) => ((span?.end ?? 0) - (span?.start ?? 0)) / 3_600_000),
    ).toEqual([7, 9, 8])
    expect(clock(nextWorkingInstant(at("2026-06-07T02:00"), nights))).toBe("2026-06-07T02:00")
  })

  it("says when there is no working time at all", () => {
    const never: WorkCalendar = { ...calendar, week: {} }
    expect(hasWorkingTime("2026-01-01", never)).toBe(false)
    expect(hasWorkingTime("2026-01-01", calendar)).toBe(true)
    expect(() => addWorking(at("2026-06-01T08:00"), working(1), never)).toThrow("no working time")
    expect(() => nextWorkingInstant(at("2026-06-01T08:00"), never)).toThrow("no working time")
    expect(() => subtractWorking(at("2026-06-01T08:00"), working(1), never)).toThrow("no working time")
    expect(() => addWorkingDays("2026-06-01", 1, never)).toThrow("no working time")
  })

  it("leaves the calendar as it was", () => {
    const before = structuredClone(calendar)
    addWorking(at("2026-06-01T08:00"), working(100), calendar)
    expect(calendar).toEqual(before)
  })
})
