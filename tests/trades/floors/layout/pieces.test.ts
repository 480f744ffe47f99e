import { describe, expect, it } from "vitest"
import type { Region } from "../../../../src/kernels/polygon/region.ts"
import {
  endLean,
  isUprightBox,
  notchesOf,
  partBetween,
  ripWidths,
  widthAt,
} from "../../../../src/trades/floors/layout/pieces.ts"

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

describe("pieces of a run", () => {
  it("a part between two crosswise lines keeps its true shape", () => {
    const [part] = partBetween(notched, 500, 1500)
    expect(widthAt([part!], 700)).toBeCloseTo(130, 6)
    expect(widthAt([part!], 1200)).toBeCloseTo(189, 6)
    expect(isUprightBox(plain)).toBe(true)
    expect(isUprightBox(notched)).toBe(false)
  })

  it("rip widths at both ends, carried straight to the ends of a taper", () => {
    expect(ripWidths([plain], 189)).toEqual({ left: 189, right: 189 })
    const widths = ripWidths([tapered], 189)
    expect(widths.left).toBeCloseTo(100, 6)
    expect(widths.right).toBeCloseTo(120, 6)
    expect(ripWidths([notched], 189)).toEqual({ left: 189, right: 189 })
  })

  it("an end out of square, and which edge is longer", () => {
    expect(endLean(plain, "right")).toBe(0)
    expect(endLean(leaning, "right")).toBeCloseTo(12, 9)
    expect(endLean(leaning, "left")).toBeCloseTo(0, 9)
    expect(endLean(splayed, "right")).toBeCloseTo(-189, 9)
  })

  it("a notch by its place and depth; no notch in rips, tapers and leaning ends", () => {
    for (const shape of [plain, tapered, leaning, splayed]) expect(notchesOf([shape])).toEqual([])
    expect(notchesOf([notched])).toEqual([{ from: 400, to: 900, low: 130, high: 189 }])
    const corner = figure([0, 0], [2000, 0], [2000, 100], [1700, 100], [1700, 189], [0, 189])
    expect(notchesOf([corner])).toEqual([{ from: 1700, to: 2000, low: 100, high: 189 }])
    expect(endLean(corner, "right")).toBe(0)
  })
})
