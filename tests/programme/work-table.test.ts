import { describe, expect, it } from "vitest"
import { type Instant, instantAt, working } from "../../src/kernels/calendar/instant.ts"
import {
  addWorking,
  nextWorkingInstant,
  subtractWorking,
  type WorkCalendar,
  workingBetween,
} from "../../src/kernels/calendar/work-calendar.ts"
import { seeded } from "../../src/kernels/schedule/seeded.ts"
import { calendarsOf } from "../../src/programme/calendars.ts"
import { WorkTable } from "../../src/programme/work-table.ts"
import { programmeOf } from "../fixtures/programme.ts"

const [calm, noisy, aired] = calendarsOf(
  programmeOf({
    start: "2027-03-22",
    quiet: [{ days: ["mon", "thu"], from: "09:30", to: "14:00", why: "sleeps by day" }],
  }),
  "Europe/London",
  8,
) as [WorkCalendar, WorkCalendar, WorkCalendar, WorkCalendar]

describe("a calendar laid out", () => {
  it.each([
    ["calm", calm],
    ["noisy", noisy],
    ["aired", aired],
  ])("says what the calendar says, over Easter and the change of the clock (%s)", (_, calendar) => {
    const table = new WorkTable(calendar, "2027-03-22")
    const next = seeded(11)
    const from = instantAt("2027-03-22", "08:00", calendar.zone)
    for (let trial = 0; trial < 200; trial++) {
      const moment = Math.round(from + next() * 40 * 86_400_000) as Instant
      const start = nextWorkingInstant(moment, calendar)
      const hours = Math.round(next() * 120) / 4
      expect(table.next(moment)).toBe(start)
      expect(table.add(start, hours)).toBe(addWorking(start, working(hours), calendar))
      const end = addWorking(start, working(hours), calendar)
      if (hours > 0) {
        const back = table.subtract(end, hours)
        expect(table.add(back, hours)).toBe(end)
        expect(workingBetween(subtractWorking(end, working(hours), calendar), end, calendar)).toBeCloseTo(
          hours,
          9,
        )
        expect(table.between(start, end)).toBeCloseTo(hours, 9)
      }
    }
  })

  it("numbers working days and finds the next", () => {
    const table = new WorkTable(calm, "2027-03-22")
    const at = (date: string, time: string) => instantAt(date, time, calm.zone)
    // 26 March 2027 is Good Friday, 29 March Easter Monday (gov.uk, bank holidays).
    expect(table.nextDay(at("2027-03-25", "10:00"))).toBe(at("2027-03-30", "08:00"))
    expect(table.dayNumber(at("2027-03-25", "10:00"))).toBe(3)
    expect(table.dayNumber(at("2027-03-30", "16:00"))).toBe(4)
    expect(table.dateAt(at("2027-03-30", "12:30"))).toBe("2027-03-30")
    expect(table.clock(at("2027-03-30", "09:00"), "22:00")).toBe(at("2027-03-30", "22:00"))
  })
})
