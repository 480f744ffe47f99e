import { describe, expect, it } from "vitest"
import { stairRules } from "../../../../src/trades/joinery/stairs/rules.ts"
import { joineryFacts } from "../../../facts/joinery.ts"

describe("what guidance asks of a stair", () => {
  it.each(joineryFacts.stairLimits)("$what: $value ($source)", ({ id, value }) => {
    expect(stairRules.find((rule) => rule.id === id)?.value).toBe(value)
  })
})
