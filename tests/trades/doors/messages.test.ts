import { describe, expect, it } from "vitest"
import { doesNotFit, halfText, standsProud, thresholdClash } from "../../../src/trades/doors/messages.ts"

const at = { file: "house.yaml", path: ["doors", 0] }

describe("messages at a door", () => {
  it("write half millimetres, and round to them", () => {
    expect([3, 3.5, 3.2, 3.3, -2.5].map(halfText)).toEqual(["3", "3.5", "3", "3.5", "-2.5"])
  })

  it("say by how much a gap is over, and what more would have to come off", () => {
    const over = { edge: "lock edge", at: "top", figure: 6, limit: 4, kind: "gap-over", over: 0 } as const
    expect(doesNotFit("D1", at, over, "").mend).toMatch(/by 2 mm/)
    const under = { edge: "head", at: "left", figure: 0.5, limit: 2, kind: "gap-under", over: 1.5 } as const
    expect(doesNotFit("D1", at, under, "").message).toMatch(/1.5 mm more/)
  })

  it("name both sides of a clash, and how far a leaf stands proud", () => {
    const clash = [
      { by: "air", what: "air", least: 10 },
      { by: "smoke", what: "smoke", most: 3 },
    ] as const
    expect(thresholdClash("D1", at, clash).message).toMatch(/at least 10 mm.*at most 3 mm/)
    expect(standsProud("D1", at, { leaf: 44, rebate: 37 }).message).toMatch(/7 mm proud/)
  })
})
