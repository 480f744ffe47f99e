import { describe, expect, it } from "vitest"
import { Fault } from "../../src/kernels/fault.ts"
import type { RuleEntry } from "../../src/rulebook/entry.ts"
import { Rules, rulesInForce } from "../../src/rulebook/rules.ts"

const gap: RuleEntry = {
  id: "trial-gap",
  what: "gap at the head",
  value: 3,
  unit: "mm",
  status: "common practice",
  source: null,
  safetyFloor: { least: 2, most: 4 },
}
const open: RuleEntry = {
  ...gap,
  id: "trial-open",
  what: "gap at the foot",
  value: 8,
  safetyFloor: undefined,
}
const at = { file: "job.yaml", path: ["overrides"] }
const reason = "the maker says so"

describe("the rulebook", () => {
  it("gives values by id and keeps its order", () => {
    const rules = new Rules([open, gap])
    expect(rules.value("trial-gap")).toBe(3)
    expect(rules.all().map((entry) => entry.id)).toEqual(["trial-open", "trial-gap"])
  })

  it("takes neither an id twice nor a question for one it has not", () => {
    expect(() => new Rules([gap, gap])).toThrow(Fault)
    expect(() => new Rules([gap]).value("trial-gpa")).toThrow(Fault)
  })
})

describe("a job's overrides", () => {
  it("stand in place of the rulebook's value, which stays to be printed beside the reason", () => {
    const { rules, findings } = rulesInForce([gap, open], [{ id: "trial-gap", value: 4, reason }], at)
    expect(findings).toEqual([])
    expect(rules.entry("trial-gap")).toMatchObject({ value: 4, standard: 3, reason })
    expect(rules.entry("trial-open")).toEqual(open)
    expect(gap.value).toBe(3)
  })

  it.each([
    [{ id: "trial-gpa", value: 3, reason }, "override-unknown-rule", ["overrides", 0, "id"]],
    [{ id: "trial-gap", value: 1.9, reason }, "override-below-safety-floor", ["overrides", 0, "value"]],
    [{ id: "trial-gap", value: 4.1, reason }, "override-below-safety-floor", ["overrides", 0, "value"]],
  ])("%j is refused, and the rulebook's value stays", (override, code, path) => {
    const { rules, findings } = rulesInForce([gap, open], [override], at)
    expect(findings.map(({ code, severity, at }) => ({ code, severity, path: at.path }))).toEqual([
      { code, severity: "error", path },
    ])
    expect(rules.value("trial-gap")).toBe(3)
  })

  it("may go as far as the floor itself", () => {
    for (const value of [2, 4])
      expect(rulesInForce([gap], [{ id: "trial-gap", value, reason }], at).rules.value("trial-gap")).toBe(
        value,
      )
  })
})
