import { describe, expect, it } from "vitest"
import { clearWidth } from "../../../../src/trades/doors/hanging/clear-width.ts"
import { sideGap } from "../../../../src/trades/doors/hanging/gap.ts"
import { leafSizeFor, leafSizes } from "../../../../src/trades/doors/hanging/leaf-sizes.ts"
import { sealCuts, sealLength } from "../../../../src/trades/doors/hanging/seals.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { CLEAR_WIDTHS, FIRE_GAPS, LEAF_SIZES, METRIC_SETS } from "../../../facts/doors.ts"
import { doorRules } from "../houses.ts"

describe("leaf sizes", () => {
  const sizes = leafSizes(rulesRead(doorRules))
  it.each(LEAF_SIZES)("hold $what as $width x $height, the inches to the millimetre ($source)", (fact) => {
    expect(sizes).toContainEqual({ width: fact.width, height: fact.height })
    expect(Math.abs(fact.feet[0]! * 25.4 - fact.width)).toBeLessThanOrEqual(1)
    expect(Math.abs(fact.feet[1]! * 25.4 - fact.height)).toBeLessThanOrEqual(1)
  })

  it.each(METRIC_SETS)("hold the $what, $width wide ($source)", ({ width, height }) => {
    expect(sizes).toContainEqual({ width, height })
  })

  it("finds the leaf for a kept lining: 768 takes 762, 687 takes none as sold with gaps over 2", () => {
    const gap = { least: 2, most: 4 }
    expect(leafSizeFor(768, gap, sizes)?.width).toBe(762)
    expect(leafSizeFor(687, gap, sizes)).toBeNull()
    expect(leafSizeFor(692, gap, sizes)?.width).toBe(686)
  })
})

describe("gaps", () => {
  it(`of a fire door are ${FIRE_GAPS.what} (${FIRE_GAPS.source})`, () => {
    const { least, target, most } = FIRE_GAPS
    expect(sideGap(true, undefined, rulesRead(doorRules))).toEqual({ least, target, most })
  })

  it("are the leaf's own where its certificate is tighter", () => {
    expect(sideGap(true, { gapMost: 3 }, rulesRead(doorRules))).toEqual({ least: 2, target: 3, most: 3 })
  })
})

describe("clear opening", () => {
  it.each(CLEAR_WIDTHS)("of $what is $clear ($source)", ({ leaf, thickness, clear }) => {
    expect(clearWidth({ leaf, gap: 3, stop: 12, thickness })).toBe(clear)
  })
})

describe("intumescent strip", () => {
  // 768 + 1992 + 1992 less three hinges of 100 = 4452
  it("runs round head and both jambs, broken at three hinges", () => {
    const cuts = sealCuts({ width: 768, height: 1992, headGap: 3 }, { tops: [150, 903, 1656], length: 100 })
    expect(sealLength(cuts)).toBe(768 + 1992 + 1992 - 300)
    expect(cuts.find((cut) => cut.where === "hinge jamb")?.lengths).toEqual([153, 653, 653, 233])
  })
})
