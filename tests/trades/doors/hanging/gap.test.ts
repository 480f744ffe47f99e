import { describe, expect, it } from "vitest"
import { sideGap } from "../../../../src/trades/doors/hanging/gap.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { FIRE_GAPS } from "../../../facts/doors.ts"
import { doorRules } from "../houses.ts"

describe("gaps", () => {
  it(`of a fire door are ${FIRE_GAPS.what} (${FIRE_GAPS.source})`, () => {
    const { least, target, most } = FIRE_GAPS
    expect(sideGap(true, undefined, rulesRead(doorRules))).toEqual({ least, target, most })
  })

  it("are the leaf's own where its certificate is tighter", () => {
    expect(sideGap(true, { gapMost: 3 }, rulesRead(doorRules))).toEqual({ least: 2, target: 3, most: 3 })
  })
})
