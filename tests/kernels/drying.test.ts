import { describe, expect, it } from "vitest"
import { layerHours, timesForCold, timesForDamp } from "../../src/kernels/drying.ts"

describe("times as long", () => {
  it("doubles for each step colder and never falls below once", () => {
    expect(timesForCold(10, 20, 10)).toBe(2)
    expect(timesForCold(0, 20, 10)).toBe(4)
    expect(timesForCold(28, 20, 10)).toBe(1)
  })

  it("goes with the dryness left in the air: 60 % leaves 40, 80 % leaves 20, saturated air none", () => {
    expect(timesForDamp(80, 60)).toBe(2)
    expect(timesForDamp(90, 60)).toBe(4)
    expect(timesForDamp(30, 60)).toBe(1)
    expect(timesForDamp(100, 60)).toBe(Number.POSITIVE_INFINITY)
  })

  it("a layer takes its first hours, then so much a mm, then more beyond the knee", () => {
    const law = { hours: 10, upTo: 5, perMm: 2, knee: { at: 20, perMm: 3 } }
    expect([1, 5, 8, 20, 22].map((mm) => layerHours(mm, law))).toEqual([10, 10, 16, 40, 46])
  })
})
