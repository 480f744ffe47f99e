import { describe, expect, it } from "vitest"
import { wallRows } from "../../src/trades/wall-points.ts"
import { surveyed } from "../fixtures/rooms.ts"

describe("a wall with marks", () => {
  const room = surveyed({
    windows: [{ id: "W1", kind: "window", wall: 2, fromLeft: 800, width: 900, height: 1200, sill: 900 }],
  })
  const wall = room.walls[1]!

  it("stands on the finished floor: 19 under the datum's heights; openings and marks at their places", () => {
    const marks = [{ text: "1", fromLeft: 500, height: 450 }]
    const [row] = wallRows({ room, floor: 19, walls: [{ wall, marks }] })
    const { shapes } = row!.drawing
    const boxes = shapes.filter((shape) => shape.kind === "box")
    expect(boxes[0]).toMatchObject({ at: { x: 800, y: 881 }, width: 900, height: 1200 })
    expect(boxes[1]!.at.x + boxes[1]!.width / 2).toBe(500)
    expect(boxes[1]!.at.y + boxes[1]!.height / 2).toBe(450)
    const outline = shapes.find((shape) => shape.kind === "polygon")!
    expect(Math.max(...(outline.kind === "polygon" ? outline.points : []).map((point) => point.y))).toBe(
      2400 - 19,
    )
  })

  it("walls stand in rows that fit a sheet at 1:50, each where the one before ends and a gap more", () => {
    const walls = room.walls.map((each) => ({ wall: each, marks: [] }))
    const rows = wallRows({ room, floor: 0, walls })
    // 4,000 + 700 + 3,000 = 7,700 fits 8,500; a third wall does not.
    expect(rows.map((row) => row.caption)).toEqual(["Walls 1 and 2 from inside", "Walls 3 and 4 from inside"])
    const lefts = rows[0]!.drawing.shapes.flatMap((shape) => (shape.kind === "line" ? [shape.from.x] : []))
    expect(lefts).toEqual([0, 4700])
  })
})
