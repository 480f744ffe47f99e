import { describe, expect, it } from "vitest"
import { timeText } from "../../../src/trades/decorating/drying-board.ts"
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

describe("drying board", () => {
  const board = (facts = moulding) => sheets({}, facts)[1]!
  const rowsAt = (caption: string, facts = moulding) => {
    const table = board(facts).blocks.find(
      (block) => block.kind === "table" && block.caption.includes(caption),
    )
    return table?.kind === "table" ? table.rows.map((row) => row.cells) : []
  }

  it("emulsion at 60 %: do not at 8 °C, then 7, 6, 4 and 4 hours (4 h doubled for each 10 °C below 20, rounded up)", () => {
    // 12 °C: 4 x 2^0.8 = 6.96; 16 °C: 4 x 2^0.4 = 5.28; 20 and 24 °C: 4.
    expect(rowsAt("60 %").find((cells) => cells[0] === "Emulsion")).toEqual([
      "Emulsion",
      "next coat",
      "do not",
      "7 h",
      "6 h",
      "4 h",
      "4 h",
    ])
  })

  it("emulsion at 80 %: twice as long", () => {
    expect(
      rowsAt("80 %")
        .find((cells) => cells[0] === "Emulsion")!
        .slice(3),
    ).toEqual(["14 h", "11 h", "8 h", "8 h"])
  })

  it("lists floor oil on oak and grout on tile, and has a place to write in for each", () => {
    const on = (floorFinish: string) =>
      rowsAt("Started", { ...moulding, floorFinish }).map((cells) => cells[0])
    expect(on("oak").join()).toMatch(/Floor oil/)
    expect(on("tile").join()).toMatch(/Grout/)
    expect(on("carpet").join()).not.toMatch(/Floor oil|Grout/)
    expect(rowsAt("60 %").length).toBe(rowsAt("Started").length)
  })

  it("times are rounded up, minutes under an hour, days when long", () => {
    expect([0.5, 1.01, 71.2, 72, 85, "do not" as const].map(timeText)).toEqual([
      "30 min",
      "2 h",
      "72 h",
      "3 days",
      "4 days",
      "do not",
    ])
  })
})
