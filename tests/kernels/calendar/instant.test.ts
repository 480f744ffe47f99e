import { describe, expect, it } from "vitest"
import {
  addElapsed,
  clockAfter,
  clockAt,
  elapsed,
  elapsedBetween,
  instantAt,
  instantText,
  working,
} from "../../../src/kernels/calendar/instant.ts"
import { CLOCK_CHANGES } from "../../facts/calendar.ts"

const LONDON = "Europe/London"

describe("instants and elapsed time", () => {
  it.each(CLOCK_CHANGES)("$hours h from $from is $to in London ($source)", ({ from, hours, to }) => {
    const [date = "", time = ""] = from.split("T")
    const after = clockAfter({ date, time }, elapsed(hours), LONDON)
    expect(`${after.date}T${after.time}`).toBe(to)
  })

  it("turns clock time to instant and back, by the zone named", () => {
    expect(instantAt("2026-01-15", "08:00", LONDON)).toBe(Date.UTC(2026, 0, 15, 8))
    expect(instantAt("2026-07-15", "08:00", LONDON)).toBe(Date.UTC(2026, 6, 15, 7))
    expect(instantAt("2026-07-15", "24:00", LONDON)).toBe(Date.UTC(2026, 6, 15, 23))
    expect(clockAt(instantAt("2026-07-15", "16:30", LONDON), LONDON)).toEqual({
      date: "2026-07-15",
      time: "16:30",
    })
    expect(instantText(instantAt("2026-07-15", "16:30", LONDON), LONDON)).toBe("2026-07-15T16:30+01:00")
  })

  it("a time the clock jumps over, and one it shows twice", () => {
    // 01:30 on 29 March 2026 does not exist: an hour on it is 02:30 summer time, 01:30 universal
    expect(instantAt("2026-03-29", "01:30", LONDON)).toBe(Date.UTC(2026, 2, 29, 1, 30))
    // 01:30 on 25 October 2026 comes twice: the first is summer time
    expect(instantAt("2026-10-25", "01:30", LONDON)).toBe(Date.UTC(2026, 9, 25, 0, 30))
  })

  it("elapsed hours add up and measure back", () => {
    const start = instantAt("2026-10-24", "16:00", LONDON)
    expect(elapsedBetween(start, addElapsed(start, elapsed(72.5)))).toBe(72.5)
    expect(() => instantAt("2026-10-24", "4pm", LONDON)).toThrow("no time of day")
  })

  it("elapsed and working hours do not mix", () => {
    const start = instantAt("2026-10-24", "16:00", LONDON)
    // @ts-expect-error working hours are not elapsed hours
    addElapsed(start, working(8))
    // @ts-expect-error a bare number is neither
    addElapsed(start, 8)
    expect(working(8)).toBe(8)
  })
})
