import { describe, expect, it } from "vitest"
import { BoundTrail, NO_REASON } from "../../../../src/kernels/schedule/exact/bound-trail.ts"

describe("trail of bounds", () => {
  // activity 0 starts from 2 to 6, activity 1 from 0 to 3
  const make = () => new BoundTrail(Int32Array.of(2, 0), Int32Array.of(6, 3))

  it("each bound and its opposite exclude one another and leave nothing between", () => {
    const trail = make()
    for (let w = 3; w <= 6; w++) {
      const later = trail.literal(0, w)
      const sooner = trail.opposite[later]!
      expect([trail.keyOf[sooner], trail.worth(sooner)]).toEqual([1, 1 - w])
      expect(trail.opposite[sooner]).toBe(later)
    }
  })

  it("knows what holds, what cannot, and what made it so", () => {
    const trail = make()
    trail.newLevel()
    trail.raise(0, 4, NO_REASON)
    trail.newLevel()
    trail.raise(0, 6, 8)
    expect(trail.isTrue(trail.literal(0, 5))).toBe(true)
    expect(trail.isFalse(trail.literal(1, -5))).toBe(true)
    expect(trail.isTrue(trail.literal(2, 1))).toBe(false)
    expect(trail.isFalse(trail.literal(2, 1))).toBe(false)
    expect([trail.entryOf(0, 6), trail.entryOf(0, 5), trail.entryOf(0, 4), trail.entryOf(0, 2)]).toEqual([
      1, 1, 0, -1,
    ])
    trail.pop()
    expect(trail.value[0]).toBe(4)
    expect(trail.isTrue(trail.literal(0, 5))).toBe(false)
  })

  it("a bound below the least stands for the least, which always holds", () => {
    const trail = make()
    expect(trail.literal(0, -7)).toBe(trail.literal(0, 2))
    expect(trail.isTrue(trail.literal(0, -7))).toBe(true)
    expect(trail.isFalse(trail.literal(0, 7))).toBe(true)
  })
})
