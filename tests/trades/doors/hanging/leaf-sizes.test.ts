import { describe, expect, it } from "vitest"
import { leafSizeFor, leafSizes } from "../../../../src/trades/doors/hanging/leaf-sizes.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { LEAF_SIZES, METRIC_SETS } from "../../../facts/doors.ts"
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
