import { describe, expect, it } from "vitest"
import { endText, pieceTable } from "../../../src/trades/joinery/piece-table.ts"
import { allOf, roomPieces } from "../../../src/trades/joinery/work.ts"
import { joineryTask } from "./task.ts"

describe("table of pieces", () => {
  it("gives settings to half a degree, none for a square end", () => {
    expect(endText({ as: "square", setting: 0.2 })).toBe("square")
    expect(endText({ as: "square", setting: 9.926 })).toBe("bevel 10°")
    expect(endText({ as: "external-mitre", setting: 43.6 })).toBe("external mitre 43.5°")
  })

  it("has a row a piece with long and short point", () => {
    const pieces = allOf(roomPieces(joineryTask()))
    const table = pieceTable(pieces, "Pieces")
    if (table.kind !== "table") throw new Error("no table")
    expect(table.rows).toHaveLength(pieces.length)
    // head of 768 inside: 768 + 12 + 138
    expect(table.rows.find((row) => row.cells[0] === "R1-1-D1H")!.cells.slice(2, 4)).toEqual(["918", "780"])
  })
})
