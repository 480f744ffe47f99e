import { describe, expect, it } from "vitest"
import type { Drawing } from "../../src/kernels/drawing/shapes.ts"
import { drawn, textArea } from "../../src/press/drawn.ts"

/** A square of some millimetres of building. */
const square = (side: number): Drawing => ({
  title: "Square",
  description: "A square.",
  shapes: [{ kind: "box", at: { x: 0, y: 0 }, width: side, height: side, stroke: { width: 0.35 } }],
})

const block = (side: number, more: { scale?: number; maxHeight?: number } = {}) => ({
  kind: "drawing" as const,
  drawing: square(side),
  caption: "A square",
  ...more,
})

describe("a drawing on a sheet", () => {
  it("is drawn to a scale that fits, never over the text area", () => {
    for (const side of [300, 1500, 4000, 12_000]) {
      for (const orientation of ["portrait", "landscape"] as const) {
        const { widthMm, scale } = drawn(block(side), orientation, "a")
        expect(widthMm).toBeLessThanOrEqual(textArea[orientation].width)
        expect(scale).toMatch(/^1:\d+$/)
        expect(side / Number(scale.slice(2))).toBeLessThanOrEqual(textArea[orientation].height)
      }
    }
  })

  it("is true to its scale: 4,000 at 1:50 is 80 mm on paper", () => {
    const { svg } = drawn(block(4000, { scale: 50 }), "portrait", "a")
    const xs = [.../ d="([^"]+)"/.exec(svg)![1]!.matchAll(/[ML](-?[\d.]+) /g)].map(([, x]) => Number(x))
    expect(svg).toContain('width="82mm" height="82mm" viewBox="0 0 82 82"')
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(80, 3)
  })

  it("is smaller where it may be less high", () => {
    const scaleOf = (maxHeight: number) =>
      Number(drawn(block(4000, { maxHeight }), "portrait", "a").scale.slice(2))
    expect(scaleOf(40)).toBeGreaterThan(scaleOf(165))
  })

  it("is laid out once for a place, and carries the id of its place", () => {
    const one = block(4000)
    expect(drawn(one, "portrait", "a")).toBe(drawn(one, "portrait", "a"))
    expect(drawn(one, "portrait", "b")).not.toBe(drawn(one, "portrait", "a"))
  })

  it("sets hostile text as text", () => {
    const drawing: Drawing = {
      title: "</svg><script>alert(1)</script>",
      description: '"><b>x</b>',
      shapes: [
        { kind: "text", at: { x: 0, y: 0 }, text: "<script>&\"'", height: 2.5 },
        ...square(4000).shapes,
      ],
    }
    const { svg } = drawn({ ...block(1), drawing }, "portrait", "a")
    expect(svg).not.toContain("<script")
    expect(svg).not.toContain("<b>")
    expect(svg.match(/<\/svg>/g)).toHaveLength(1)
  })
})
