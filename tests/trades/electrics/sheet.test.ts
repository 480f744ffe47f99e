import { describe, expect, it } from "vitest"
import { electrics } from "../../../src/trades/electrics/index.ts"
import { electricsSheets } from "../../../src/trades/electrics/sheet.ts"
import { electricsWork } from "../../../src/trades/electrics/work.ts"
import { badTables } from "../../fixtures/tables.ts"
import { bedroom, rules, task } from "./bedroom.ts"

describe("electrics on paper", () => {
  it("tables fit their columns, walls with points are drawn, boxes for test papers stand", () => {
    const given = task(bedroom)
    const [sheet] = electricsSheets(given, electricsWork(given))
    expect(badTables(sheet!)).toEqual([])
    const drawn = sheet!.blocks.flatMap((block) => (block.kind === "drawing" ? [block.caption] : []))
    expect(drawn.join()).toMatch(/^Walls? .*1/)
    expect(drawn.at(-1)).toMatch(/^Ceiling/)
    expect(drawn).toHaveLength(3)
    expect(sheet!.blocks.some((block) => block.kind === "boxes")).toBe(true)
    for (const id of sheet!.rests) expect(rules.entry(id).id).toBe(id)
  })

  it("is listed with its inputs described", () => {
    expect(electrics.rules.every((each) => each.id.startsWith("elec-"))).toBe(true)
  })
})
