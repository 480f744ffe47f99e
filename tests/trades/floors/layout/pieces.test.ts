import { describe, expect, it } from "vitest"
import { regionArea } from "../../../../src/kernels/polygon/measure.ts"
import type { Region } from "../../../../src/kernels/polygon/region.ts"
import { endLean, isUprightBox, notchesOf, partBetween } from "../../../../src/trades/floors/layout/pieces.ts"
import { ripOf, ripOfPiece } from "../../../../src/trades/floors/layout/rips.ts"

const figure = (...points: [number, number][]): Region => ({
  outline: points.map(([x, y]) => ({ x, y })),
  holes: [],
})
const plain = figure([0, 0], [2000, 0], [2000, 189], [0, 189])
const tapered = figure([0, 0], [2000, 0], [2000, 120], [0, 100])
const notched = figure(
  [0, 0],
  [2000, 0],
  [2000, 189],
  [900, 189],
  [900, 130],
  [400, 130],
  [400, 189],
  [0, 189],
)
const leaning = figure([0, 0], [2000, 0], [2012, 189], [0, 189])
const splayed = figure([0, 0], [2000, 0], [1811, 189], [0, 189])

const level = { bottom: 0, top: 189 }
const notches = (parts: Region[]) => notchesOf(parts, ripOfPiece(ripOf(parts[0]!, level), parts, level))

describe("pieces of a run", () => {
  it("a part between two crosswise lines keeps its true shape", () => {
    const [part] = partBetween(notched, 500, 1500)
    expect(regionArea(part!)).toBeCloseTo(400 * 130 + 600 * 189, 1)
    expect(isUprightBox(plain)).toBe(true)
    expect(isUprightBox(notched)).toBe(false)
  })

  it("an end out of square, and which edge is longer", () => {
    expect(endLean(plain, "right")).toBe(0)
    expect(endLean(leaning, "right")).toBeCloseTo(12, 9)
    expect(endLean(leaning, "left")).toBeCloseTo(0, 9)
    expect(endLean(splayed, "right")).toBeCloseTo(-189, 9)
  })

  it("a notch by its place and depth; no notch in rips, tapers and leaning ends", () => {
    for (const shape of [plain, tapered, leaning, splayed]) expect(notches([shape])).toEqual([])
    expect(notches([notched])).toEqual([{ from: 400, to: 900, edge: "far", depth: { left: 59, right: 59 } }])
    const corner = figure([0, 0], [2000, 0], [2000, 100], [1700, 100], [1700, 189], [0, 189])
    expect(notches([corner])).toEqual([{ from: 1700, to: 2000, edge: "far", depth: { left: 89, right: 89 } }])
    expect(endLean(corner, "right")).toBe(0)
  })

  it("a stepped cut-out is told step by step", () => {
    const stepped = figure(
      [0, 60],
      [40, 60],
      [40, 20],
      [1500, 20],
      [1500, 0],
      [2000, 0],
      [2000, 127],
      [0, 127],
    )
    expect(notches([stepped])).toEqual([
      { from: 0, to: 40, edge: "near", depth: { left: 60, right: 60 } },
      { from: 40, to: 1500, edge: "near", depth: { left: 20, right: 20 } },
    ])
  })

  it("a cut-out along a slanting face runs from one depth to another; a hole lies inside", () => {
    const slanted = figure([0, 0], [2000, 0], [2000, 120], [1600, 100], [1600, 189], [0, 189])
    const [notch] = notches([slanted])
    expect(notch).toMatchObject({ from: 1600, to: 2000, edge: "far" })
    expect(notch!.depth.left).toBeCloseTo(89, 1)
    expect(notch!.depth.right).toBeCloseTo(69, 1)
    const hole = [
      { x: 500, y: 60 },
      { x: 600, y: 60 },
      { x: 600, y: 130 },
      { x: 500, y: 130 },
    ]
    expect(notches([{ outline: plain.outline, holes: [hole] }])).toEqual([
      { from: 500, to: 600, edge: "inside", depth: { left: 60, right: 130 } },
    ])
  })

  it("a corner out of line by a hair is neither notch nor step", () => {
    const idle = figure([0, 0], [2000, 0], [1905.49, 94.5], [1811, 189], [0, 189])
    expect(notches([idle])).toEqual([])
    expect(endLean(idle, "right")).toBeCloseTo(-189, 9)
  })
})
