import { expect, it } from "vitest"
import { decoratingRules } from "../../../src/trades/decorating/rules.ts"

it("ids are the trade's own and stand once; published and remembered values name a document, common practice none", () => {
  expect(new Set(decoratingRules.map((rule) => rule.id)).size).toBe(decoratingRules.length)
  for (const rule of decoratingRules) {
    expect(rule.id).toMatch(/^decor-/)
    expect(rule.source === null, rule.id).toBe(rule.status === "common practice")
    expect(rule.range, rule.id).not.toBe("")
  }
})
