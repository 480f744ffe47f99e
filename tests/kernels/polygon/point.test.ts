import { describe, expect, it } from "vitest"
import {
  between,
  cosSin,
  distance,
  distanceToSegment,
  nearestOnSegment,
  rotated,
} from "../../../src/kernels/polygon/point.ts"

describe("points", () => {
  it("measures to a straight piece: square on where it can, else to the nearer end (3-4-5 triangle)", () => {
    const from = { x: 0, y: 0 }
    const to = { x: 100, y: 0 }
    expect(distance({ x: 0, y: 0 }, { x: 3, y: 4 })).toBe(5)
    expect(distanceToSegment({ x: 50, y: 7 }, from, to)).toBe(7)
    expect(distanceToSegment({ x: 103, y: 4 }, from, to)).toBe(5)
    expect(nearestOnSegment({ x: -9, y: 2 }, from, to)).toEqual(from)
    expect(distanceToSegment({ x: 3, y: 4 }, from, from)).toBe(5)
    expect(between(from, to, 0.25)).toEqual({ x: 25, y: 0 })
  })

  it("turns anticlockwise, exactly at quarter turns", () => {
    expect(rotated([{ x: 10, y: 0 }], 90)).toEqual([{ x: 0, y: 10 }])
    expect(rotated([{ x: 10, y: 0 }], -90, { x: 10, y: 10 })).toEqual([{ x: 0, y: 10 }])
    expect(cosSin(-180)).toEqual({ cos: -1, sin: 0 })
    expect(cosSin(60).cos).toBeCloseTo(0.5, 15)
  })
})
