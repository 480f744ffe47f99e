import { describe, expect, it } from "vitest"
import { plumbingSheets } from "../../../src/trades/plumbing/sheet.ts"
import { plumbingWork } from "../../../src/trades/plumbing/work.ts"
import { badTables } from "../../fixtures/tables.ts"
import { radiator, rules, task, wares } from "./rooms.ts"

describe("plumbing on paper", () => {
  it("tables fit their columns; the wall is drawn; the pressure test has its line", () => {
    const given = task({ radiators: [radiator], sanitaryware: wares })
    const work = plumbingWork(given)
    const [sheet] = plumbingSheets(given, work)
    expect(badTables(sheet!)).toEqual([])
    expect(sheet!.blocks.some((block) => block.kind === "drawing")).toBe(true)
    expect(JSON.stringify(sheet)).toMatch(/15 \+ 2 × 12 = 39/)
    for (const id of work.rests) expect(rules.entry(id).id).toBe(id)
  })
})
