import { describe, expect, it } from "vitest"
import { quantitiesSheet } from "../../src/sheets/quantities.ts"
import { smallResult } from "../fixtures/small-job.ts"
import { cellsOf, tablesOf } from "./sheets.ts"

describe("what to bring into a room", () => {
  it("is a table a trade with net need, what to bring and how it was worked out", async () => {
    const result = await smallResult()
    const sheet = quantitiesSheet(result, result.house.rooms[1]!)
    expect(tablesOf(sheet).map((table) => table.caption)).toEqual(["Floors"])
    expect(cellsOf(sheet)).toEqual([["oak board", "16.55 m²", "17.40 m²", "by hand", ""]])
  })

  it("is no table where nothing is brought, and says so", async () => {
    const result = await smallResult()
    const sheet = quantitiesSheet(result, result.house.rooms[0]!)
    expect(cellsOf(sheet)).toEqual([])
    expect(JSON.stringify(sheet.blocks)).toContain("Nothing is to be brought")
  })
})
