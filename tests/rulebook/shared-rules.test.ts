import { describe, expect, it } from "vitest"
import { Rules } from "../../src/rulebook/rules.ts"
import { sharedRules } from "../../src/rulebook/shared-rules.ts"

describe("what several trades share", () => {
  const rules = new Rules(sharedRules)

  it("takes 25 kg as the most for one man close in at elbow height (HSE, L23, figure of the lifting filter)", () => {
    expect(rules.value("lift-one-person")).toBe(25)
    expect(rules.entry("lift-one-person").safetyFloor).toEqual({ most: 25 })
  })

  it("takes more off a length for its end than for a cut (common practice)", () => {
    expect(rules.value("saw-kerf")).toBeGreaterThan(0)
    expect(rules.value("saw-end-trim")).toBeGreaterThanOrEqual(rules.value("saw-kerf"))
  })
})
