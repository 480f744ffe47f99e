import { describe, expect, it } from "vitest"
import { joineryRules } from "../../../src/trades/joinery/rules.ts"
import { joineryFacts } from "../../facts/joinery.ts"

describe("constants of joinery", () => {
  it.each(joineryFacts.ranges)("$id lies within what is usual: $source", ({ id, least, most }) => {
    const { value } = joineryRules.find((rule) => rule.id === id)!
    expect(value).toBeGreaterThanOrEqual(least)
    expect(value).toBeLessThanOrEqual(most)
  })
})
