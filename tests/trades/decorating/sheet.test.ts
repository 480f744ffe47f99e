import { describe, expect, it } from "vitest"
import { decoratingSheets } from "../../../src/trades/decorating/sheet.ts"
import { decoratingWork } from "../../../src/trades/decorating/work.ts"
import { badTables } from "../../fixtures/tables.ts"
import { attic, moulding } from "./attic.ts"

const sheets = (written = {}, facts = moulding) => {
  const task = attic(written, facts)
  return decoratingSheets(task, decoratingWork(task))
}

describe("decorating on paper", () => {
  it("a room has its surfaces and coats, its drying board, its door tags", () => {
    expect(sheets().map((each) => each.kind)).toEqual(["decorating", "drying", "door-tag"])
  })

  it("every row of every table has a cell for each column, and every tick and write cell is empty", () => {
    for (const walls of ["new-plaster", "old-paint", "old-gloss", "stained"]) {
      for (const sheet of sheets({ walls, woodwork: { state: "bare", doors: "clear" } }))
        expect(badTables(sheet)).toEqual([])
    }
  })

  it("prints each wall once with its net area, and the coats a row a group", () => {
    const [sheet] = sheets()
    const cells = (caption: string) =>
      sheet!.blocks.flatMap((block) =>
        block.kind === "table" && block.caption === caption ? block.rows.map((row) => row.cells) : [],
      )
    expect(cells("Surfaces").filter(([name]) => name === "Wall 2")).toEqual([
      ["Wall 2", "new plaster", "wall colour", "6.22", "", "6.22"],
    ])
    expect(cells("Coats, in order").flat().join()).not.toMatch(/Wall 2/)
  })

  it("draws where the colours meet in a room under slopes, heavy along the whole top or only the level part", () => {
    const heavy = (slopeIs: string) => {
      const drawing = sheets({ slopeIs })[0]!.blocks.find((block) => block.kind === "drawing")
      if (drawing?.kind !== "drawing") return -1
      return drawing.drawing.shapes.filter((shape) => shape.kind === "line" && shape.stroke.width === 0.7)
        .length
    }
    expect(heavy("ceiling")).toBe(2)
    expect(heavy("wall")).toBe(1)
  })
})
