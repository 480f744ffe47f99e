import { describe, expect, it } from "vitest"
import { acrossText, tilingSheets } from "../../../src/trades/tiling/sheet.ts"
import { tilingWork } from "../../../src/trades/tiling/work.ts"
import { badTables } from "../../fixtures/tables.ts"
import { rules, task } from "./wash-room.ts"

describe("tiling on paper", () => {
  it("tables fit their columns, a wall is drawn with its tiles, levels are told", () => {
    const given = task({ floor: true, walls: [{ wall: 2, top: 2000 }] })
    const work = tilingWork(given)
    const [sheet] = tilingSheets(given, work)
    expect(badTables(sheet!)).toEqual([])
    const drawing = sheet!.blocks.find((block) => block.kind === "drawing")
    // 7 × 5 tiles and the wall's outline.
    const polygons =
      drawing?.kind === "drawing" ? drawing.drawing.shapes.filter((shape) => shape.kind === "polygon") : []
    expect(polygons).toHaveLength(36)
    for (const id of work.rests) expect(rules.entry(id).id).toBe(id)
  })

  it("says cuts in words", () => {
    expect(acrossText({ whole: 5, first: 136, last: 136, from: "a tile on the centre", count: 7 })).toBe(
      "5 whole, cut 136 left and right, a tile on the centre",
    )
    expect(acrossText({ whole: 0, first: 120, last: null, from: "one tile", count: 1 })).toBe("1 cut to 120")
  })
})
