import { expect, it } from "vitest"
import { programmeRules } from "../../src/programme/rules.ts"

it("constants of the programme are common practice, each named once", () => {
  expect(new Set(programmeRules.map((rule) => rule.id)).size).toBe(programmeRules.length)
  for (const rule of programmeRules) {
    expect(rule.id).toMatch(/^programme-/)
    expect(rule).toMatchObject({ status: "common practice", source: null })
  }
})
