import { describe, expect, it } from "vitest"
import type { CutBar } from "../../src/kernels/cutting/problem.ts"
import { boxesOverlap } from "../../src/kernels/drawing/labels.ts"
import { layoutDrawing } from "../../src/kernels/drawing/layout.ts"
import { barsDrawing } from "../../src/sheets/saw-drawing.ts"
import type { Piece } from "../../src/trades/trade.ts"

/** A length of 4,400 cut into pieces, 5 off each end and 3 a saw cut. */
function length(number: number, lengths: number[]) {
  const pieces = lengths.map(
    (each, index): Piece => ({
      mark: `A${number}-${index + 1}-S1`,
      trade: "joinery",
      room: "A1",
      product: "skirting",
      what: "skirting",
      length: each,
      left: { as: "scribed", setting: index % 2 === 0 ? 45 : 0 },
      right: { as: "square", setting: 0 },
      mayBeJointed: false,
    }),
  )
  const used = lengths.reduce((sum, each) => sum + each + 3, 0)
  const bar: CutBar = {
    stockId: "4400",
    length: 4400,
    cost: 1,
    inHand: false,
    pieces: pieces.map((piece) => piece.mark),
    kerfs: 3 * lengths.length,
    endTrim: 5,
    offcut: 4390 - used,
    keep: 4390 - used > 600,
  }
  return { number, bar, pieces }
}

const rows = [
  length(1, [2077, 2077]),
  length(2, [1506, 961, 949, 613, 341]),
  length(3, [345, 345, 300, 250, 200, 160, 120, 90, 60, 40]),
  length(4, [3000]),
]
const drawing = barsDrawing({
  bars: rows,
  pieces: new Map(rows.flatMap((row) => row.pieces.map((piece) => [piece.mark, piece]))),
  kerf: 3,
  longest: 4400,
  name: "skirting",
})
const { labels, box } = layoutDrawing(drawing, 1)

describe("the drawing of lengths", () => {
  it("fits across the sheet", () => {
    expect(box.right - box.left).toBeLessThanOrEqual(180)
  })

  it("has no text over another, however short the pieces", () => {
    for (const [index, label] of labels.entries())
      for (const other of labels.slice(index + 1))
        expect(boxesOverlap(label.box, other.box), `${label.text} / ${other.text}`).toBe(false)
  })

  it("names every piece of some width, with its length, and the offcut to keep", () => {
    const texts = labels.map((label) => label.text)
    expect(texts).toEqual(expect.arrayContaining(["A1-1-S1", "2,077", "5-S1", "341", "3-S1", "300"]))
    expect(texts).toContain("keep 1,387")
  })

  it("draws every piece in its place: trims, pieces and saw cuts make up the length", () => {
    const outlines = drawing.shapes.flatMap((shape) => (shape.kind === "polygon" ? [shape.points] : []))
    expect(outlines).toHaveLength(2 + 5 + 10 + 1)
    // second length: 5 + 1,506 + 3 + 961 + 3 + 949 + 3 + 613 + 3 = 4,046 to the last piece, at 164 mm to 4,400
    expect(outlines[6]![0]!.x).toBeCloseTo((4046 * 164) / 4400, 6)
  })
})
