import { describe, expect, it } from "vitest"
import { sealCuts, sealLength } from "../../../../src/trades/doors/hanging/seals.ts"

describe("intumescent strip", () => {
  // 768 + 1992 + 1992 less three hinges of 100 = 4452
  it("runs round head and both jambs, broken at three hinges", () => {
    const cuts = sealCuts(
      { width: 768, lockJamb: 1992, hingeJamb: 1992, headGap: 3 },
      { tops: [150, 903, 1656], length: 100 },
    )
    expect(sealLength(cuts)).toBe(768 + 1992 + 1992 - 300)
    expect(cuts.find((cut) => cut.where === "hinge jamb")?.lengths).toEqual([153, 653, 653, 233])
  })
})
