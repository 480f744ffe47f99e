import { describe, expect, it } from "vitest"
import { figures, fitted, profileOf, rank, type Shape } from "../../src/kernels/section-shape.ts"

/** Walls of 1,000, slopes 1,200 by 900 (3-4-5), a flat of 1,600. */
const shape: Shape = [1000, 1200, 900, 1600, 1200, 900]

describe("figures of a section", () => {
  it("follow from its shape", () => {
    expect(figures["left slope"](shape)).toBe(1500)
    expect(figures["right pitch"](shape)).toBeCloseTo(36.8699, 4)
    expect([figures.floor(shape), figures.ceiling(shape), figures["right wall"](shape)]).toEqual([
      4000, 1900, 1000,
    ])
  })

  it("give the shape back", () => {
    const readings = (
      ["left wall", "left slope", "left pitch", "right slope", "right pitch", "flat"] as const
    ).map((figure) => ({ figure, read: figures[figure](shape), tolerance: 1 }))
    const unknowns = [0, 1, 2, 3, 4, 5]
    expect(rank(readings, unknowns)).toBe(6)
    expect(rank(readings.slice(1), unknowns)).toBe(5)
    for (const [place, size] of fitted(readings, unknowns).entries())
      expect(size).toBeCloseTo(shape[place]!, 4)
    expect(profileOf(shape)).toHaveLength(6)
    expect(profileOf([1000, 0, 0, 1600, 0, 0])).toHaveLength(4)
  })
})
