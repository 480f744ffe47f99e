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

  it("the coat table goes in the order of the coats and prints net litres to two places", () => {
    const table = sheets()[0]!.blocks.find(
      (block) => block.kind === "table" && block.caption === "Coats, in order",
    )!
    const rows = table.kind === "table" ? table.rows : []
    const groups = rows.filter((row) => row.as === "group").map((row) => row.cells[0]!.split(":")[0])
    expect(groups).toEqual([
      "Mist coat",
      "Ceiling, first coat",
      "White on walls",
      "Ceiling, last coat",
      "Wall colour, first coat",
      "Undercoat wood",
      "Finish wood",
      "Wall colour, last coat",
    ])
    // Mist on the level ceiling: 6.4 / 9 x 3/4 = 0.53 l of paint and 6.4 / 9 / 4 = 0.18 l of water.
    expect(rows[1]!.cells.slice(0, 4)).toEqual(["Level ceiling", "6.40", "0.53", "0.18"])
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
