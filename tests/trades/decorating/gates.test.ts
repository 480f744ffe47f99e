import { describe, expect, it } from "vitest"
import { gateOf, wholeHours } from "../../../src/trades/decorating/gates.ts"
import { attic } from "./attic.ts"

const inAir = (temperature: number, humidity: number, written = {}) => {
  const task = attic(written)
  return { ...task, job: { ...task.job, climate: { ...task.job.climate, temperature, humidity } } }
}

describe("gates after a coat", () => {
  it.each([
    [20, 60, 4],
    // 2^(10/10) x 4 = 8; (100 - 60) / (100 - 80) = 2: 16 h.
    [10, 60, 8],
    [10, 80, 16],
  ])("emulsion at %d °C and %d %%: %d h", (temperature, humidity, hours) => {
    expect(gateOf(inAir(temperature, humidity), "emulsion")!.hours).toBe(hours)
  })

  it("in still air half as long again", () => {
    expect(gateOf(inAir(20, 60, { still: true }), "emulsion")!.hours).toBe(6)
  })

  it("outside its air no hour at all", () => {
    expect(gateOf(inAir(9, 60), "emulsion")).toBeUndefined()
    expect(gateOf(inAir(20, 81), "emulsion")).toBeUndefined()
  })

  it("thick plaster waits longer: 11 mm are 168 h and 8 mm of 134.4 h", () => {
    expect(gateOf(inAir(20, 60), "skim", 11)!.hours).toBe(Math.ceil(168 + 8 * 134.4))
  })

  it("says what ends it besides the hours and what it forbids", () => {
    expect(gateOf(inAir(20, 60), "trim-water")).toMatchObject({
      until: "does not drag under a dry finger",
      forbids: ["coat", "close"],
    })
  })

  it("hours are rounded up, binary noise cleared first", () => {
    expect(wholeHours(4.01)).toBe(5)
    expect(wholeHours(0.1 + 0.2 + 3.7)).toBe(4)
  })
})
