import { describe, expect, it } from "vitest"
import { freeLength, leafOnPlan, middle, roomiest } from "../../../src/survey/drawings/pieces.ts"
import { demoRoom } from "../demo.ts"
import { overlappingLabels } from "./labels.ts"

describe("pieces of plans and elevations", () => {
  it("finds the roomiest point of an L in its wide part, not in its middle", () => {
    const outline = [
      { x: 0, y: 0 },
      { x: 4000, y: 0 },
      { x: 4000, y: -800 },
      { x: 2000, y: -800 },
      { x: 2000, y: -4000 },
      { x: 0, y: -4000 },
    ]
    const at = roomiest(outline)
    expect(at.x).toBeGreaterThan(700)
    expect(at.x).toBeLessThan(1300)
    expect(middle(outline).x).toBe(2000)
  })

  it("keeps a wall's number clear of its doors", () => {
    // A1, wall 1, 4,860 long: D1 from 1,560 to 2,405, D3 from 2,890 to 3,658; the longest stretch is the first: its middle 780.
    expect(freeLength(demoRoom("A1").walls[0]!)).toBeCloseTo(780, 6)
    expect(freeLength(demoRoom("A1").walls[1]!)).toBeCloseTo(1976, -1)
  })

  it("swings a leaf only in the room it opens into", () => {
    const here = demoRoom("A1")
    const there = demoRoom("A4")
    const leaf = (room: typeof here) => {
      const door = room.doors.find((each) => each.door.id === "D1")!
      return leafOnPlan(door, room.walls[door.wall - 1]!, room)
    }
    expect(leaf(here).map(({ kind }) => kind)).toEqual(["line", "arc"])
    expect(leaf(there)).toEqual([])
  })

  it("would see a label laid over another", () => {
    const text = { kind: "text", height: 2.5, fixed: true } as const
    const drawing = (x: number) => ({
      title: "Trial",
      description: "",
      shapes: [
        { ...text, at: { x: 0, y: 0 }, text: "3,940" },
        { ...text, at: { x, y: 0 }, text: "980" },
      ],
    })
    expect(overlappingLabels(drawing(200), 50)).toHaveLength(1)
    expect(overlappingLabels(drawing(900), 50)).toEqual([])
  })
})
