import { describe, expect, it } from "vitest"
import { unfoldedPieces } from "../../../src/trades/joinery/elevations.ts"
import { allOf, roomPieces } from "../../../src/trades/joinery/work.ts"
import { joineryTask } from "./task.ts"

describe("walls unfolded with their pieces", () => {
  const task = joineryTask()
  const cut = roomPieces(task)
  const drawings = unfoldedPieces({
    room: task.room,
    floor: 19,
    skirting: cut.skirting,
    architrave: cut.architrave,
    margin: 6,
    runs: cut.runs,
    sets: cut.sets,
    pieces: allOf(cut),
  })
  const shapes = drawings.flatMap((drawing) => drawing.shapes)

  it("hold all walls in rows that fit the sheet", () => {
    // 4,000 and 3,000 to a row at 1:50
    expect(drawings.map((drawing) => drawing.title)).toEqual([
      "Walls 1, 2 with their pieces",
      "Walls 3, 4 with their pieces",
    ])
  })

  it("show every skirting once, with its length, over the length of its run", () => {
    const boards = shapes.filter((shape) => shape.kind === "box" && shape.fill === "light")
    expect(boards).toHaveLength(cut.skirtings.length)
    const texts = shapes.flatMap((shape) => (shape.kind === "text" ? [shape.text] : []))
    for (const piece of cut.skirtings)
      expect(texts.some((text) => text.startsWith(piece.mark.split("-").at(-1)!))).toBe(true)
    expect(texts).toContain("R1-1-D1\nL, H, R")
  })

  it("number the boards as the pieces are, past a stretch that is too short to saw", () => {
    // 94 from the corner leaves 19 beside the architrave, less 18 for the scribe
    const narrow = joineryTask({}, { room: { doors: [{ door: "D1", wall: 1, fromLeft: 94 }] } })
    const pieces = roomPieces(narrow)
    expect(pieces.slivers).toEqual([{ wall: 1, length: 1 }])
    const drawn = unfoldedPieces({
      room: narrow.room,
      floor: 19,
      skirting: pieces.skirting,
      architrave: pieces.architrave,
      margin: 6,
      runs: pieces.runs,
      sets: pieces.sets,
      pieces: allOf(pieces),
    }).flatMap((drawing) => drawing.shapes)
    const boards = drawn.filter((shape) => shape.kind === "box" && shape.fill === "light")
    expect(boards).toHaveLength(pieces.skirtings.length)
    const first = pieces.skirtings.find((piece) => piece.mark === "R1-1-S1")!
    const board = boards.find((shape) => shape.kind === "box" && Math.abs(shape.width - first.length) < 20)
    expect(board?.kind === "box" && board.at.x).toBeGreaterThan(94 + 762)
  })
})
