import { expect, it } from "vitest"
import { plumbingRules } from "../../../src/trades/plumbing/rules.ts"

it("ids are the trade's own and stand once; published and remembered values name a document, common practice none", () => {
  expect(new Set(plumbingRules.map((rule) => rule.id)).size).toBe(plumbingRules.length)
  for (const rule of plumbingRules) {
    expect(rule.id).toMatch(/^plumb-/)
    expect(rule.source === null, rule.id).toBe(rule.status === "common practice")
    expect(rule.range, rule.id).not.toBe("")
  }
})
