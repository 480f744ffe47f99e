import { expect, it } from "vitest"
import { tilingRules } from "../../../src/trades/tiling/rules.ts"

it("ids are the trade's own and stand once; published and remembered values name a document, common practice none", () => {
  expect(new Set(tilingRules.map((rule) => rule.id)).size).toBe(tilingRules.length)
  for (const rule of tilingRules) {
    expect(rule.id).toMatch(/^tile-/)
    expect(rule.source === null, rule.id).toBe(rule.status === "common practice")
    expect(rule.range, rule.id).not.toBe("")
  }
})
