import { describe, expect, it } from "vitest"
import { seeded } from "../../../src/kernels/schedule/seeded.ts"

describe("seeded numbers", () => {
  it("the same seed gives the same numbers, another seed others", () => {
    const draw = (seed: number) => {
      const chance = seeded(seed)
      return Array.from({ length: 20 }, chance)
    }
    expect(draw(7)).toEqual(draw(7))
    expect(draw(7)).not.toEqual(draw(8))
  })

  it("spreads evenly from 0 up to 1: each tenth holds a tenth, within four standard deviations", () => {
    const chance = seeded(1)
    const tenths = new Array<number>(10).fill(0)
    for (let n = 0; n < 100_000; n++) {
      const tenth = Math.floor(chance() * 10)
      tenths[tenth] = tenths[tenth]! + 1
    }
    for (const share of tenths) expect(Math.abs(share - 10_000)).toBeLessThan(4 * Math.sqrt(100_000 * 0.09))
  })
})
