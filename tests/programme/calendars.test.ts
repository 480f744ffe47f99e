import { describe, expect, it } from "vitest"
import { addWorkingDays } from "../../src/kernels/calendar/work-calendar.ts"
import { calendarFindings, calendarsOf, limit } from "../../src/programme/calendars.ts"
import { programmeOf } from "../fixtures/programme.ts"

const quiet = [{ days: ["mon", "tue", "wed", "thu", "fri"], from: "07:00", to: "18:00", why: "exams" }]

describe("the calendars of a job", () => {
  /** Counted on a wall calendar with the bank holidays of England and Wales, the day after the start as 1. */
  it.each([
    ["2026-04-02", 10, "2026-04-20"],
    ["2026-12-23", 5, "2027-01-04"],
    ["2027-12-22", 5, "2027-12-31"],
  ])("%s and %i working days is %s", (from, days, to) => {
    const [any] = calendarsOf(programmeOf({ start: from }), "Europe/London", 8)
    expect(addWorkingDays(from, days, any!)).toBe(to)
  })

  it("without an hour for loud work are an error only where work is loud", () => {
    const file = programmeOf({ quiet })
    const all = calendarsOf(file, "Europe/London", 8)
    expect(calendarFindings(file, all, new Set([0]))).toEqual([])
    expect(calendarFindings(file, all, new Set([limit.loud]))).toMatchObject([
      { code: "no-working-time", severity: "error", at: { path: ["quiet"] } },
    ])
  })

  it("without an hour for solvent are an error only where there is solvent", () => {
    const file = programmeOf({ bedtime: "16:00" })
    const all = calendarsOf(file, "Europe/London", 8)
    expect(calendarFindings(file, all, new Set([0, limit.loud]))).toEqual([])
    expect(calendarFindings(file, all, new Set([limit.fumes]))).toMatchObject([
      { code: "no-working-time", severity: "error", at: { path: ["bedtime"] } },
    ])
  })

  it("without an hour for loud work with solvent are an error, though each has hours by itself", () => {
    const quiet = [
      { days: ["mon", "tue", "wed", "thu", "fri"], from: "07:00", to: "15:00", why: "sleeps by day" },
    ]
    const file = programmeOf({ quiet })
    const all = calendarsOf(file, "Europe/London", 8)
    expect(calendarFindings(file, all, new Set([limit.loud, limit.fumes]))).toEqual([])
    expect(calendarFindings(file, all, new Set([limit.loud + limit.fumes]))).toHaveLength(1)
  })
})
