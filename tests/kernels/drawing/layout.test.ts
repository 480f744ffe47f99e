import { describe, expect, it } from "vitest"
import { boxesOverlap } from "../../../src/kernels/drawing/labels.ts"
import { fitDrawing, layoutDrawing } from "../../../src/kernels/drawing/layout.ts"
import { markReach } from "../../../src/kernels/drawing/marks.ts"
import type { Drawing, Shape } from "../../../src/kernels/drawing/shapes.ts"
import { distance } from "../../../src/kernels/polygon/point.ts"
import { edgesOf } from "../../../src/kernels/polygon/region.ts"
import { mmText } from "../../../src/kernels/units.ts"
import { generatedRegion, seeded } from "../polygon/outlines.ts"

/** A generated room with every wall dimensioned, numbered and named. */
function roomDrawing(random: () => number): Drawing {
  const region = generatedRegion(random)
  const shapes: Shape[] = [
    { kind: "polygon", points: region.outline, holes: region.holes, stroke: { width: 0.7 } },
    ...edgesOf(region.outline).flatMap(({ from, to }, index): Shape[] => [
      { kind: "dimension", from, to, offset: 8, text: mmText(distance(from, to)) },
      {
        kind: "text",
        at: { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 },
        text: String(index + 1),
        height: 5,
        bold: true,
      },
    ]),
    { kind: "text", at: region.outline[0]!, text: "Room\n12.5 m2", height: 5 },
    { kind: "scale-bar" },
  ]
  return { title: "Room", description: "A generated room", shapes }
}

describe("layout", () => {
  it("lays no label over another, and all of everything inside its box, in 200 generated rooms", () => {
    const random = seeded(77)
    for (let count = 0; count < 200; count++) {
      const { labels, marks, box } = layoutDrawing(roomDrawing(random), 50)
      const overlaps = labels.flatMap((one, index) =>
        labels.slice(index + 1).filter((other) => boxesOverlap(one.box, other.box)),
      )
      expect(overlaps).toEqual([])
      const outside = marks
        .flatMap(markReach)
        .filter(({ x, y }) => x <= box.left || x >= box.right || y <= box.bottom || y >= box.top)
      expect(outside).toEqual([])
    }
  })

  it("counts dimensions and texts when it fits a drawing to the paper", () => {
    const wall = { from: { x: 0, y: 0 }, to: { x: 3940, y: 0 } }
    const bare: Drawing = {
      title: "Wall",
      description: "One wall",
      shapes: [{ kind: "line", ...wall, stroke: { width: 0.7 } }],
    }
    const paper = { widthMm: 200, heightMm: 10 }
    expect(fitDrawing(bare, paper)).toBe(20)
    const dimensioned = {
      ...bare,
      shapes: [...bare.shapes, { kind: "dimension", ...wall, offset: 12, text: "3,940" }],
    }
    expect(fitDrawing(dimensioned as Drawing, paper)).toBe(200)
  })
})
