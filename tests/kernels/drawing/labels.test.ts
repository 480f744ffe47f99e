import { describe, expect, it } from "vitest"
import { boxesOverlap, placeLabels } from "../../../src/kernels/drawing/labels.ts"
import type { Label } from "../../../src/kernels/drawing/marks.ts"
import { seeded, whole } from "../polygon/outlines.ts"

function label(x: number, y: number, over: Partial<Label> = {}): Label {
  const plain = { angle: 0, bold: false, fixed: false, masked: false, leader: false, shifts: [] }
  return { at: { x, y }, text: "3,940", height: 3.5, ...plain, ...over }
}

describe("overlap of turned boxes", () => {
  it("sees area in common, not a touch: unit squares, one turned by 45 degrees reaches 0.707", () => {
    const square = { centre: { x: 0, y: 0 }, width: 1, height: 1, angle: 0 }
    expect(boxesOverlap(square, { ...square, centre: { x: 0.99, y: 0 } })).toBe(true)
    expect(boxesOverlap(square, { ...square, centre: { x: 1, y: 0 } })).toBe(false)
    const turned = (x: number) => ({ ...square, centre: { x, y: 0 }, angle: 45 })
    expect(boxesOverlap(square, turned(1.2))).toBe(true)
    expect(boxesOverlap(square, turned(1.21))).toBe(false)
  })
})

describe("placing labels", () => {
  it("leaves alone what is free, keeps fixed ones, and moves the rest as little as it can", () => {
    const [first, second, third] = placeLabels([label(0, 0), label(1, 0, { fixed: true }), label(90, 0)])
    expect(second!.moved).toBe(0)
    expect(third!.at).toEqual({ x: 90, y: 0 })
    expect(first!.moved).toBeGreaterThan(0)
    expect(first!.moved).toBeLessThan(10)
  })

  it("tries a dimension's own line first", () => {
    const shifts = [0, 25].map((x) => ({ x, y: 0 }))
    const [moved] = placeLabels([label(0, 0, { shifts }), label(0, 0, { fixed: true })])
    expect(moved!.at).toEqual({ x: 25, y: 0 })
  })

  it("keeps clear of a stroke where there is room beside it", () => {
    const [beside] = placeLabels([label(0, 0)], [{ from: { x: -50, y: 0.5 }, to: { x: 50, y: 0.5 } }])
    expect(beside!.moved).toBeGreaterThan(0)
  })

  it("lays none over another in 200 crowded drawings", () => {
    const random = seeded(200)
    for (let count = 0; count < 200; count++) {
      const labels = Array.from({ length: whole(random, 5, 25) }, () =>
        label(whole(random, 0, 60), whole(random, 0, 60), {
          angle: whole(random, 0, 3) * 30,
          height: whole(random, 5, 10) / 2,
        }),
      )
      const placed = placeLabels(labels)
      for (const [index, one] of placed.entries()) {
        for (const other of placed.slice(index + 1)) expect(boxesOverlap(one.box, other.box)).toBe(false)
      }
    }
  })
})
