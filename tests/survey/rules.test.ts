import { describe, expect, it } from "vitest"
import { surveyRules } from "../../src/survey/rules.ts"

describe("surveyRules", () => {
  it("says of every value what it is and what it rests on", () => {
    for (const { id, what, status, source } of surveyRules) {
      expect(id).toMatch(/^survey-/)
      expect(what).not.toBe("")
      expect(status === "common practice").toBe(source === null)
    }
    expect(new Set(surveyRules.map(({ id }) => id)).size).toBe(surveyRules.length)
  })

  it("lets an assumed right angle be out further than a measured turn: 1 degree over 3 m is 52 mm", () => {
    const value = (id: string) => surveyRules.find((entry) => entry.id === id)!.value
    expect(value("survey-assumed-turn")).toBeGreaterThan(value("survey-measured-turn"))
    expect(3000 * Math.tan((value("survey-measured-turn") * Math.PI) / 180)).toBeCloseTo(52.4, 1)
  })
})
