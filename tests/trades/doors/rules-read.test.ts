import { describe, expect, it } from "vitest"
import { readThrough, rulesRead } from "../../../src/trades/doors/rules-read.ts"
import { doorRules } from "./houses.ts"

describe("a reader of the rulebook", () => {
  it("keeps what was asked for, once each; one that reads through fills both lists", () => {
    const outer = rulesRead(doorRules)
    outer.value("door-gap-least")
    const inner = readThrough(outer)
    inner.value("door-gap-most")
    inner.value("door-gap-most")
    expect(inner.ids()).toEqual(["door-gap-most"])
    expect(outer.ids()).toEqual(["door-gap-least", "door-gap-most"])
  })

  it("knows what is recalled", () => {
    const rules = rulesRead(doorRules)
    expect(rules.isFromMemory("door-air-area")).toBe(true)
    expect(rules.isFromMemory("door-fire-gap-most")).toBe(false)
    expect(rules.ids()).toEqual([])
  })
})
