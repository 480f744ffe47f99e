import { describe, expect, it } from "vitest"
import { type DryingProcessId, dryingProcesses, dryingRests } from "../../src/rulebook/drying.ts"
import { dryingRules } from "../../src/rulebook/drying-rules.ts"

describe("entries of drying and cure", () => {
  it("every entry is used by some process", () => {
    const used = new Set((Object.keys(dryingProcesses) as DryingProcessId[]).flatMap(dryingRests))
    expect(dryingRules.map((entry) => entry.id).filter((id) => !used.has(id))).toEqual([])
  })

  it("common practice names no source, the rest name the document recalled", () => {
    for (const { status, source } of dryingRules) expect(source === null).toBe(status === "common practice")
  })
})
