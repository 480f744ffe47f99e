import { describe, expect, it } from "vitest"
import { regionArea, regionPerimeter } from "../../../src/kernels/polygon/measure.ts"
import { sectionAt, strips } from "../../../src/kernels/polygon/strips.ts"
import { generatedRegion, seeded } from "./outlines.ts"

/** An L, 4000 wide below and 2500 wide above, with a hole. */
const room = {
  outline: [
    { x: 0, y: 0 },
    { x: 4000, y: 0 },
    { x: 4000, y: 1000 },
    { x: 2500, y: 1000 },
    { x: 2500, y: 3000 },
    { x: 0, y: 3000 },
  ],
  holes: [
    [
      { x: 1000, y: 1500 },
      { x: 1500, y: 1500 },
      { x: 1500, y: 2000 },
      { x: 1000, y: 2000 },
    ],
  ],
}

describe("sections", () => {
  it("gives the stretches inside at a level, a hair above a level edge", () => {
    expect(sectionAt(room, 500)).toEqual([{ from: 0, to: 4000 }])
    expect(sectionAt(room, 1000)).toEqual([{ from: 0, to: 2500 }])
    expect(sectionAt(room, 1700)).toEqual([
      { from: 0, to: 1000 },
      { from: 1500, to: 2500 },
    ])
    expect(sectionAt(room, 2000)).toEqual([{ from: 0, to: 2500 }])
    expect(sectionAt(room, 3000)).toEqual([])
  })
})

describe("strips", () => {
  it("cuts rows with their furthest left and right, several pieces where a hole parts a row", () => {
    const rows = strips(room, [0, 900, 1550, 1950, 3000])
    expect(rows.map(({ strip, left, right }) => [strip, left, right])).toEqual([
      [0, 0, 4000],
      [1, 0, 4000],
      [2, 0, 1000],
      [2, 1500, 2500],
      [3, 0, 2500],
    ])
    expect(regionArea(rows[1]!.region)).toBe(4000 * 100 + 2500 * 550 - 500 * 50)
  })

  it("loses nothing: the pieces of 300 generated figures sum to the whole", () => {
    const random = seeded(11)
    const levels = Array.from({ length: 120 }, (_, row) => -12_000 + row * 201.5)
    for (let count = 0; count < 300; count++) {
      const region = generatedRegion(random)
      const sum = strips(region, levels).reduce((total, piece) => total + regionArea(piece.region), 0)
      expect(Math.abs(sum - regionArea(region))).toBeLessThanOrEqual(regionPerimeter(region) / 1000)
    }
  })
})
