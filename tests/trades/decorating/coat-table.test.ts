import { describe, expect, it } from "vitest"
import { coatTable } from "../../../src/trades/decorating/coat-table.ts"
import { roomPaint } from "../../../src/trades/decorating/room-paint.ts"
import { attic } from "./attic.ts"

function rowsOf(written = {}) {
  const task = attic(written)
  const table = coatTable(task, roomPaint(task).lines)
  return table.kind === "table" ? table.rows.map((row) => row.cells) : []
}

describe("the coats of a room on paper", () => {
  it("go in order, a row a coat and group, the coat's name once", () => {
    expect(rowsOf().map(([coat, on]) => [coat, on])).toEqual([
      ["Mist coat: white", "Level ceiling and slopes"],
      ["", "Walls"],
      ["", "Window reveals"],
      ["Ceiling, first coat: white", "Level ceiling and slopes"],
      ["White on walls: white", "Walls"],
      ["", "Window reveals"],
      ["Ceiling, last coat: white", "Level ceiling and slopes"],
      ["Wall colour, first coat: sage, wall colour 1", "Walls"],
      ["", "Window reveals"],
      ["Undercoat wood: under, grey", "Doors, trim colour"],
      ["", "Woodwork, trim colour"],
      ["Finish wood: satin, trim colour", "Doors"],
      ["", "Woodwork"],
      ["Wall colour, last coat: sage, wall colour 1", "Walls"],
      ["", "Window reveals"],
    ])
  })

  it("print what the group takes: mist on 13.40 m2 of ceiling is 1.49 l of mix, three quarters of it paint", () => {
    // 6.40 + 6.9992 = 13.3992 m2; / 9 = 1.48880 l of mix: 1.11660 of paint, 0.37220 of water.
    // 4 h at 20 °C are 2^(2/10) x 4 = 4.59 at 18 °C: 5 whole hours.
    expect(rowsOf()[0]!.slice(2, 6)).toEqual(["13.40", "1.12", "0.37", "5"])
  })

  it("a wall of another colour has its own row; a paint not chosen says so", () => {
    const rows = rowsOf({ accents: [{ wall: 3, colour: "wall colour 2" }], woodwork: { state: "bare" } })
    expect(rows.map((row) => row[1])).toContain("Wall 3, wall colour 2")
    expect(rows.map((row) => row[0])).toContain("Knot and prime wood: paint to be chosen")
  })
})
