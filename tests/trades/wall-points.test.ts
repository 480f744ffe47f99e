import { describe, expect, it } from "vitest"
import { onPaper } from "../../src/trades/rests.ts"
import { wallDrawing } from "../../src/trades/wall-points.ts"
import { surveyed } from "../fixtures/rooms.ts"

describe("a wall with marks", () => {
  const room = surveyed({
    windows: [{ id: "W1", kind: "window", wall: 2, fromLeft: 800, width: 900, height: 1200, sill: 900 }],
  })
  const wall = room.walls[1]!

  it("stands on the finished floor: 19 under the datum's heights; openings and marks at their places", () => {
    const { shapes } = wallDrawing({
      room,
      wall,
      floor: 19,
      marks: [{ text: "1", fromLeft: 500, height: 450 }],
    })
    const boxes = shapes.filter((shape) => shape.kind === "box")
    expect(boxes[0]).toMatchObject({ at: { x: 800, y: 881 }, width: 900, height: 1200 })
    expect(boxes[1]!.at.x + boxes[1]!.width / 2).toBe(500)
    expect(boxes[1]!.at.y + boxes[1]!.height / 2).toBe(450)
    const outline = shapes.find((shape) => shape.kind === "polygon")!
    expect(Math.max(...(outline.kind === "polygon" ? outline.points : []).map((point) => point.y))).toBe(
      2400 - 19,
    )
  })

  it("sheets print no output rates at their foot", () => {
    expect(onPaper(["decor-waste", "decor-out-wall"])).toEqual(["decor-waste"])
  })
})
