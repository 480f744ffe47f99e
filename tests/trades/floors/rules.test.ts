import { describe, expect, it } from "vitest"
import { floorRules } from "../../../src/trades/floors/rules.ts"
import { BASE_HUMIDITY } from "../../facts/floors.ts"

describe("what the floors trade rests on", () => {
  it("ids are its own and stand once; published and remembered values name a document, common practice none", () => {
    expect(new Set(floorRules.map((rule) => rule.id)).size).toBe(floorRules.length)
    for (const rule of floorRules) {
      expect(rule.id.startsWith("floor-")).toBe(true)
      expect(rule.source === null).toBe(rule.status === "common practice")
    }
  })

  it(`a concrete base may not be overridden beyond ${BASE_HUMIDITY.older} % (${BASE_HUMIDITY.source})`, () => {
    const rule = floorRules.find((each) => each.id === "floor-deck-humidity-most")!
    expect([rule.value, rule.safetyFloor?.most]).toEqual([BASE_HUMIDITY.value, BASE_HUMIDITY.older])
  })
})
