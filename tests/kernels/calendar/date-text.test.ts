import { describe, expect, it } from "vitest"
import { dateText, dayText, momentText } from "../../../src/kernels/calendar/date-text.ts"
import { instantAt } from "../../../src/kernels/calendar/instant.ts"

describe("dates in words", () => {
  it.each([
    // Days of the week as the perpetual Gregorian calendar gives them (ISO 8601-1:2019, 4.3.2).
    ["2027-03-01", "Mon 1 Mar", "Mon 1 Mar 2027"],
    ["2028-02-29", "Tue 29 Feb", "Tue 29 Feb 2028"],
    ["2027-12-31", "Fri 31 Dec", "Fri 31 Dec 2027"],
    ["2000-01-01", "Sat 1 Jan", "Sat 1 Jan 2000"],
  ])("%s is %s", (date, day, whole) => {
    expect(dayText(date)).toBe(day)
    expect(dateText(date)).toBe(whole)
  })

  it("a moment is told by the clock of the site, summer time counted", () => {
    const moment = instantAt("2027-07-01", "08:00", "Europe/London")
    expect(momentText(moment, "Europe/London")).toBe("Thu 1 Jul 08:00")
    expect(momentText(moment, "UTC")).toBe("Thu 1 Jul 07:00")
    expect(momentText(moment, "Pacific/Auckland")).toBe("Thu 1 Jul 19:00")
  })
})
