import { describe, expect, it } from "vitest"
import { mistCoat, thinned } from "../../../src/trades/decorating/mist-coat.ts"
import { MIST } from "../../facts/decorating.ts"

describe("mist coat", () => {
  it.each(MIST)("$what: $water l of water, $mix l of mix ($source)", ({ paint, parts, water, mix }) => {
    const got = thinned(paint, { paint: parts[0]!, water: parts[1]! })
    expect(got.water).toBeCloseTo(water, 3)
    expect(got.mix).toBeCloseTo(mix, 3)
  })

  it("its rate is that of the mix: 36 m2 at 9 m2/l are 4 l of mix, at 3 to 1 only 3 l of paint and 1 of water", () => {
    expect(mistCoat(36, 9, { paint: 3, water: 1 })).toEqual({ mix: 4, paint: 3, water: 1 })
  })

  it("what is mixed for an area is what its paint becomes when thinned", () => {
    for (const parts of [
      [3, 1],
      [7, 3],
      [1, 1],
      [10, 1],
    ] as const) {
      const dilution = { paint: parts[0], water: parts[1] }
      const mist = mistCoat(27.3, 9, dilution)
      expect(thinned(mist.paint, dilution).mix).toBeCloseTo(27.3 / 9, 12)
    }
  })
})
