import { expect, it } from "vitest"
import { electricsRules } from "../../../src/trades/electrics/rules.ts"

it("ids are the trade's own and stand once; published and remembered values name a document, common practice none", () => {
  expect(new Set(electricsRules.map((rule) => rule.id)).size).toBe(electricsRules.length)
  for (const rule of electricsRules) {
    expect(rule.id).toMatch(/^elec-/)
    expect(rule.source === null, rule.id).toBe(rule.status === "common practice")
    expect(rule.range, rule.id).not.toBe("")
  }
})
