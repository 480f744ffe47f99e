import { describe, expect, it } from "vitest"
import { boxesOverlap } from "../../../../src/kernels/drawing/labels.ts"
import { layoutDrawing } from "../../../../src/kernels/drawing/layout.ts"
import { stairDrawing } from "../../../../src/trades/joinery/stairs/drawing.ts"
import { stairsOf } from "../../../../src/trades/joinery/stairs/stair.ts"
import { joineryTask } from "../task.ts"

describe("drawing of the rises", () => {
  const { job } = joineryTask({}, { passed: { R1: { floorBuildUp: 19 }, B4: { floorBuildUp: 12 } } })
  const drawing = stairDrawing(stairsOf(job, [])[0]!)

  it("climbs from floor to floor at true scale", () => {
    const lines = drawing.shapes.flatMap((shape) => (shape.kind === "polyline" ? [shape] : []))
    const finished = lines.find((line) => line.stroke.width === 0.5)!.points
    const [first, last] = [finished[0]!, finished.at(-1)!]
    // 13 rises of 205, 12 on the floor below and 19 on the one above
    expect(first.y).toBe(12)
    expect(last.y).toBe(13 * 205 + 19)
    expect(last.x - first.x).toBe(14 * 225)
  })

  it("shows every finished rise without one figure over another at 1:20", () => {
    const { labels } = layoutDrawing(drawing, 20)
    expect(labels.map((label) => label.text)).toEqual(expect.arrayContaining(["193", "205", "224", "13"]))
    for (const [index, label] of labels.entries())
      for (const other of labels.slice(index + 1)) expect(boxesOverlap(label.box, other.box)).toBe(false)
  })
})
