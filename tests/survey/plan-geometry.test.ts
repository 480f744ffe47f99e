import { describe, expect, it } from "vitest"
import { inwardNormal, offWall, rectangleOff, unitAlong } from "../../src/survey/plan-geometry.ts"

describe("places off a wall", () => {
  const start = { x: 1000, y: 500 }
  const end = { x: 1000, y: -1500 }

  it("has the inside on the right hand of the walk", () => {
    expect(unitAlong(start, end)).toEqual({ x: 0, y: -1 })
    // Walking down, the right hand is towards smaller x.
    expect(inwardNormal(start, end).x).toBeCloseTo(-1, 9)
  })

  it("counts lengths from the left end and depths into the room", () => {
    expect(offWall({ start, end }, 400, 300)).toEqual({ x: 700, y: 100 })
    expect(rectangleOff(start, end, { from: 0, to: 400, off: 100, depth: 200 })).toEqual([
      { x: 900, y: 500 },
      { x: 900, y: 100 },
      { x: 700, y: 100 },
      { x: 700, y: 500 },
    ])
  })

  it("does not fail on a wall without length", () => {
    expect(unitAlong(start, start)).toEqual({ x: 1, y: 0 })
  })
})
