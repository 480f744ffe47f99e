import { describe, expect, it } from "vitest"
import {
  adjustedMass,
  hingeCount,
  hingeGrade,
  hingesOf,
} from "../../../../src/trades/doors/hanging/hinges.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { ADJUSTED_MASSES, HINGE_GRADES, WIDE_LEAVES } from "../../../facts/doors.ts"
import { doorRules } from "../houses.ts"
import { seeded } from "./seeded.ts"

const rules = rulesRead(doorRules)
const plain = { backcheck: false, heavyUse: false, hingeLength: undefined, certificate: undefined }

describe("mass on the hinges", () => {
  it.each(ADJUSTED_MASSES)("$what ($source)", (fact) => {
    const work = { ...plain, backcheck: fact.backcheck, heavyUse: fact.heavyUse }
    const { adjusted } = adjustedMass({ ...fact.leaf, closer: fact.closer, work }, rules)
    expect(Math.abs(adjusted - fact.adjusted)).toBeLessThanOrEqual(fact.within)
  })

  it.each(WIDE_LEAVES)("a leaf 2000 high and $what adds $percent % ($source)", ({ width, percent }) => {
    const { added } = adjustedMass({ width, height: 2000, mass: 50, closer: false, work: plain }, rules)
    expect(Math.abs((added[0]?.percent ?? 0) - percent)).toBeLessThanOrEqual(1)
  })

  it("adds nothing for a leaf at least twice as high as wide", () => {
    expect(
      adjustedMass({ width: 762, height: 1981, mass: 40, closer: false, work: plain }, rules).adjusted,
    ).toBe(40)
  })
})

describe("hinges", () => {
  it.each(HINGE_GRADES)("of grade $grade carry $what ($source)", ({ mass, grade }) => {
    expect(hingeGrade(mass, false, rules)).toBe(grade)
    expect(hingeGrade(mass + 0.1, false, rules)).not.toBe(grade)
  })

  it("are three on a fire door of any weight, two on a light small leaf (common practice)", () => {
    const light = { width: 762, height: 1981, mass: 15, fire: false, external: false }
    expect(hingeCount(light, rules)).toBe(2)
    expect(hingeCount({ ...light, fire: true }, rules)).toBe(3)
    expect(hingeCount({ ...light, external: true }, rules)).toBe(3)
    expect(hingeCount({ ...light, mass: 20.5 }, rules)).toBe(3)
    expect(hingeCount({ ...light, height: 2600 }, rules)).toBe(4)
  })

  // 1981 high, 100 hinges: 150 down; 1981 - 225 - 100 = 1656; the middle one at (150 + 1656) / 2 = 903.
  it("sit 150 from the top, 225 from the foot, and between (common practice; the foot from memory)", () => {
    const hinges = hingesOf(
      {
        width: 762,
        height: 1981,
        thickness: 44,
        mass: 40,
        fire: true,
        external: false,
        closer: false,
        work: plain,
        zones: [],
      },
      rules,
    )
    expect(hinges.tops).toEqual([150, 903, 1656])
    expect(hinges.length).toBe(100)
    expect(hinges.grade).toBe(11)
  })

  it("sit 200 under the upper one where a closer pulls (hinge guides)", () => {
    const hinges = hingesOf(
      {
        width: 762,
        height: 1981,
        thickness: 44,
        mass: 40,
        fire: true,
        external: false,
        closer: true,
        work: plain,
        zones: [],
      },
      rules,
    )
    expect(hinges.tops[1]).toBe(350)
  })

  it("keep off every lock, glazing and old-keep zone, or say so: 2,000 leaves", () => {
    const draw = seeded(40)
    let moved = 0
    for (let n = 0; n < 2000; n++) {
      const height = draw.whole(1800, 2200)
      const zones = Array.from({ length: draw.whole(0, 3) }, () => {
        const from = draw.whole(0, height - 100)
        return { from, to: from + draw.whole(20, 700), what: "a zone" }
      })
      const hinges = hingesOf(
        {
          width: 762,
          height,
          thickness: 44,
          mass: draw.whole(15, 60),
          fire: draw.pick([true, false]),
          external: false,
          closer: draw.pick([true, false]),
          work: plain,
          zones,
        },
        rules,
      )
      const inZone = hinges.tops.filter((top) =>
        zones.some((zone) => top < zone.to && top + hinges.length > zone.from),
      )
      const named = new Set(hinges.clashes.map((clash) => clash.top))
      expect(inZone.every((top) => named.has(top))).toBe(true)
      if (zones.length > 0 && named.size === 0) moved++
    }
    expect(moved).toBeGreaterThan(50)
  })
})
