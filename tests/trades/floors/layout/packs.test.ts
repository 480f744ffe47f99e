import { describe, expect, it } from "vitest"
import { freshLength, packRun, packsHolding } from "../../../../src/trades/floors/layout/packs.ts"

/** A pack of four boards of 2,200 and two of 1,100. */
const mix = [
  { length: 2200, perPack: 4 },
  { length: 1100, perPack: 2 },
]

describe("packs of several lengths", () => {
  it("as many packs as the length used up first asks", () => {
    expect(packsHolding([0, 0], mix)).toBe(0)
    expect(packsHolding([4, 2], mix)).toBe(1)
    expect(packsHolding([5, 0], mix)).toBe(2)
    expect(packsHolding([1, 5], mix)).toBe(3)
  })

  it("4 x 2,200 + 2 x 1,100 = 11,000 a pack", () => {
    expect(packRun(mix)).toBe(11_000)
  })

  it("the shortest that does of opened packs, before a new pack is opened", () => {
    const piece = { length: 900, isWhole: false, longest: false }
    expect(freshLength(mix, [1, 0], piece)).toBe(1)
    expect(freshLength(mix, [1, 2], piece)).toBe(0)
    expect(freshLength(mix, [4, 2], piece)).toBe(1)
    expect(freshLength(mix, [1, 0], { ...piece, longest: true })).toBe(0)
    expect(freshLength(mix, [1, 0], { ...piece, length: 1500 })).toBe(0)
    expect(freshLength(mix, [1, 0], { ...piece, length: 2200, isWhole: true })).toBe(0)
  })
})
