import { describe, expect, it } from "vitest"
import { rules } from "../../../src/trades/doors/rules.ts"

describe("rulebook of doors", () => {
  it("names each entry once, of this trade", () => {
    const ids = rules.map((rule) => rule.id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(ids.every((id) => id.startsWith("door-"))).toBe(true)
  })

  it("gives a source where it is published or from memory, none for common practice", () => {
    for (const rule of rules) {
      expect([rule.id, rule.source === null]).toEqual([rule.id, rule.status === "common practice"])
    }
  })

  it("never calls a hinge grade over 4, the transfer area or the upper limit published: they are recalled", () => {
    const status = new Map(rules.map((rule) => [rule.id, rule.status]))
    for (const id of [
      "door-hinge-grade-7",
      "door-hinge-grade-11",
      "door-air-area",
      "door-escape-upper-limit",
    ]) {
      expect(status.get(id)).toBe("from memory")
    }
  })
})
