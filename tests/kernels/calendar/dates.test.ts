import { describe, expect, it } from "vitest"
import {
  addDays,
  datesBetween,
  diffDays,
  isIsoDate,
  isoDate,
  mondayOf,
  weekday,
  yearOf,
} from "../../../src/kernels/calendar/dates.ts"

describe("dates", () => {
  it("steps over month ends, leap days and years", () => {
    expect(addDays("2028-02-28", 1)).toBe("2028-02-29")
    expect(addDays("2026-02-28", 1)).toBe("2026-03-01")
    expect(addDays("2026-01-01", -1)).toBe("2025-12-31")
    expect(isoDate(2026, 13, 1)).toBe("2027-01-01")
    expect(diffDays("2026-01-01", "2027-01-01")).toBe(365)
    expect(diffDays("2028-03-01", "2028-02-28")).toBe(-2)
    expect(yearOf("2026-11-02")).toBe(2026)
  })

  it("knows the day of the week, before and after 1970 too", () => {
    // from memory: 1 January 1900 was a Monday, 20 July 1969 a Sunday
    expect(weekday("1969-07-20")).toBe("sunday")
    expect(weekday("1900-01-01")).toBe("monday")
    expect(weekday("2000-02-29")).toBe("tuesday")
    expect(mondayOf("2026-11-25")).toBe("2026-11-23")
    expect(mondayOf("2026-11-23")).toBe("2026-11-23")
  })

  it("lists days from first to last", () => {
    expect(datesBetween("2026-12-30", "2027-01-02")).toEqual([
      "2026-12-30",
      "2026-12-31",
      "2027-01-01",
      "2027-01-02",
    ])
    expect(datesBetween("2026-12-30", "2026-12-29")).toEqual([])
  })

  it("refuses what is no day", () => {
    expect(isIsoDate("2028-02-29")).toBe(true)
    expect(isIsoDate("2026-02-29")).toBe(false)
    expect(isIsoDate("2026-2-9")).toBe(false)
    expect(isIsoDate("2026-13-01")).toBe(false)
    expect(() => weekday("soon")).toThrow("no date")
  })
})
