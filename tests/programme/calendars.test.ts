import { describe, expect, it } from "vitest"
import { addWorkingDays } from "../../src/kernels/calendar/work-calendar.ts"
import { calendarFindings, calendarsOf } from "../../src/programme/calendars.ts"
import { programmeOf } from "../fixtures/programme.ts"

const quiet = [{ days: ["mon", "tue", "wed", "thu", "fri"], from: "07:00", to: "18:00", why: "exams" }]

describe("the calendars of a job", () => {
  /** Counted on a wall calendar with the bank holidays of England and Wales, the day after the start as 1. */
  it.each([
    ["2026-04-02", 10, "2026-04-20"],
    ["2026-12-23", 5, "2027-01-04"],
    ["2027-12-22", 5, "2027-12-31"],
  ])("%s and %i working days is %s", (from, days, to) => {
    const { calm } = calendarsOf(programmeOf({ start: from }), "Europe/London")
    expect(addWorkingDays(from, days, calm)).toBe(to)
  })

  it("without an hour for loud work are an error only where work is loud", () => {
    const file = programmeOf({ quiet })
    const both = calendarsOf(file, "Europe/London")
    expect(calendarFindings(file, both, false)).toEqual([])
    expect(calendarFindings(file, both, true)).toMatchObject([{ code: "no-working-time", severity: "error" }])
  })
})
