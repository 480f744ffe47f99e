import { describe, expect, it } from "vitest"
import type { Region } from "../../../../src/kernels/polygon/region.ts"
import { partBetween } from "../../../../src/trades/floors/layout/pieces.ts"
import { ripOf, ripOfPiece, ripWidth } from "../../../../src/trades/floors/layout/rips.ts"

const figure = (...points: [number, number][]): Region => ({
  outline: points.map(([x, y]) => ({ x, y })),
  holes: [],
})
const level = { bottom: 0, top: 189 }
const widths = (run: Region, left: number, right: number) => {
  const parts = partBetween(run, left, right)
  const rip = ripOfPiece(ripOf(run, level), parts, level)
  return [ripWidth(rip, left), ripWidth(rip, right)].map((width) => Math.round(width * 10) / 10)
}

describe("the rip of a run and of its pieces", () => {
  it("a full row is not ripped, nor is one with a notch or out-of-square ends", () => {
    expect(widths(figure([0, 0], [2000, 0], [2000, 189], [0, 189]), 0, 2000)).toEqual([189, 189])
    expect(widths(figure([0, 0], [2000, 0], [2012, 189], [0, 189]), 0, 2012)).toEqual([189, 189])
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
    expect(widths(notched, 0, 2000)).toEqual([189, 189])
  })

  it("a taper keeps its two widths, and each piece its own", () => {
    const tapered = figure([0, 0], [2000, 0], [2000, 120], [0, 100])
    expect(widths(tapered, 0, 2000)).toEqual([100, 120])
    expect(widths(tapered, 500, 1500)).toEqual([105, 115])
  })

  /* A first row 112 wide with a doorway's pocket 22 deeper from 372 to 1,156: the piece with the tongue is ripped to 134, the other to 112. */
  it("a doorway's pocket widens only the piece that reaches into it", () => {
    const row = figure(
      [0, 77],
      [372, 77],
      [372, 55],
      [1156, 55],
      [1156, 77],
      [3580, 77],
      [3580, 189],
      [0, 189],
    )
    const rip = ripOf(row, level)
    expect([ripWidth(rip, 0), ripWidth(rip, 3580)]).toEqual([112, 112])
    expect(widths(row, 0, 1860)).toEqual([134, 134])
    expect(widths(row, 1860, 3580)).toEqual([112, 112])
  })

  it("where a wall crosses the row midway, the board stays whole and the taper is cut out", () => {
    const crossed = figure([0, 0], [2000, 0], [2000, 149], [1200, 189], [0, 189])
    expect(widths(crossed, 0, 2000)).toEqual([189, 189])
  })
})
