import { describe, expect, it } from "vitest"
import { threshold, undercutForArea } from "../../../../src/trades/doors/hanging/threshold.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { FIRE_GAPS, UNDERCUTS } from "../../../facts/doors.ts"
import { doorRules } from "../houses.ts"

const rules = rulesRead(doorRules)
const nothing = { undercutFor: "none" as const, thresholdSeal: false, certificate: undefined }
const air = { ...nothing, undercutFor: "air" as const }

describe("the gap under the foot", () => {
  it.each(UNDERCUTS)("of 7,600 mm2 under a $what is $undercut ($source)", ({ width, undercut }) => {
    expect(undercutForArea(7600, width)).toBeCloseTo(undercut, 2)
  })

  it("for air under 762 is 10, under 626 12.5: the next half over 12.14", () => {
    const about = { fire: false, smoke: false, finish: "oak", work: air }
    expect(threshold({ ...about, leafWidth: 762 }, rules).least).toBe(10)
    expect(threshold({ ...about, leafWidth: 626 }, rules).least).toBe(12.5)
  })

  it("clashes where air is wanted under a smoke-control leaf: 10 against 3, and keeps to 3", () => {
    const found = threshold({ leafWidth: 762, fire: true, smoke: true, finish: "oak", work: air }, rules)
    expect(found.clash?.map((each) => each.by)).toEqual(["air", "smoke"])
    expect(found.most).toBe(FIRE_GAPS.smokeFoot)
    expect(found.target).toBe(FIRE_GAPS.smokeFoot)
  })

  it("has no clash with a seal at the foot or without smoke control", () => {
    const sealed = { ...air, thresholdSeal: true }
    expect(
      threshold({ leafWidth: 762, fire: true, smoke: true, finish: "oak", work: sealed }, rules).clash,
    ).toBeNull()
    expect(
      threshold({ leafWidth: 762, fire: true, smoke: false, finish: "oak", work: air }, rules).clash,
    ).toBeNull()
  })

  it("clashes where the data sheet allows 6 and carpet wants 10", () => {
    const work = { ...nothing, certificate: { threshold: 6 } }
    const found = threshold({ leafWidth: 762, fire: true, smoke: false, finish: "carpet", work }, rules)
    expect(found.clash?.map((each) => each.by)).toEqual(["carpet", "certificate"])
  })

  it("shows every demand, not only the one that wins", () => {
    const found = threshold({ leafWidth: 762, fire: true, smoke: true, finish: "carpet", work: air }, rules)
    expect(found.demands.map((each) => each.by)).toEqual(["air", "smoke", "certificate", "carpet"])
  })
})
