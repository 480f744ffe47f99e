import { describe, expect, it } from "vitest"
import { closerFit } from "../../../../src/trades/doors/hanging/closer.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { CLOSER_SIZES } from "../../../facts/doors.ts"
import { doorRules } from "../houses.ts"

const rules = rulesRead(doorRules)
const inside = { between: ["C1", "B1"] as [string, string], swingsInto: "B1" }

describe("a closer's power size", () => {
  it.each(CLOSER_SIZES)("$what", ({ width, mass, size }) => {
    const fit = closerFit(inside, { width, mass, fire: false }, {}, rules)
    expect(fit.size).toBe(size)
  })

  it("is no less than 3 on a fire door (from memory), and none where no size carries the leaf", () => {
    expect(closerFit(inside, { width: 600, mass: 15, fire: true }, {}, rules).size).toBe(3)
    expect(closerFit(inside, { width: 1700, mass: 15, fire: false }, {}, rules).size).toBeNull()
  })
})

describe("a closer's face", () => {
  const leaf = { width: 762, mass: 40, fire: true }
  // Common practice: on the pull side, inside the house.
  it("is the pull face, unless that looks to the open air or a garage, or the author says", () => {
    expect(closerFit(inside, leaf, {}, rules)).toMatchObject({ face: "pull", side: "B1" })
    const out = { between: ["garage", "C1"] as [string, string], swingsInto: "garage" }
    expect(closerFit(out, leaf, {}, rules)).toMatchObject({ face: "push", side: "C1" })
    expect(closerFit(inside, leaf, { closerFace: "push" }, rules)).toMatchObject({ face: "push", side: "C1" })
  })
})
