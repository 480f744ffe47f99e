import { describe, expect, it } from "vitest"
import { cuttingModel } from "../../../../src/kernels/cutting/cutting-model.ts"
import { brokenHalfCuts, halfWeight, slidesInto } from "../../../../src/kernels/cutting/exact/half-cuts.ts"
import type { Column } from "../../../../src/kernels/cutting/exact/master.ts"
import { seeded } from "../../../../src/kernels/cutting/exact/seeded.ts"
import { singleStock } from "../problems.ts"

const { model: threes } = cuttingModel(
  singleStock(
    1000,
    0,
    [490, 480, 470].map((length) => [length, 1]),
  ),
)
const pairs: Column[] = [
  { stock: 0, counts: [1, 1, 0] },
  { stock: 0, counts: [1, 0, 1] },
  { stock: 0, counts: [0, 1, 1] },
]

describe("half cuts", () => {
  it("see that three pieces of which two lie in a bar need two bars, not one and a half", () => {
    const cuts = brokenHalfCuts(threes, pairs, [0.5, 0.5, 0.5, 0, 0], 10, seeded(1))
    expect(cuts).toContainEqual({ set: [0, 1, 2], least: 2 })
  })

  it("find nothing in whole bars", () => {
    expect(brokenHalfCuts(threes, pairs, [1, 0, 1, 0, 0], 10, seeded(1))).toEqual([])
  })

  it("round a bar's half up, and count slides into the set from outside alone", () => {
    expect(halfWeight([0, 2], [3, 5, 2])).toBe(3)
    expect(slidesInto([0, 1, 3, 5, 6])).toEqual([2, 4])
  })

  it("cut off what is in fractions and no cover in whole bars and slides", () => {
    const random = seeded(7)
    const whole = (most: number) => Math.floor(random() * (most + 1))
    let seen = 0
    let held = 0
    for (let round = 0; round < 200; round++) {
      const types = 5 + whole(3)
      const items = Array.from({ length: types }, (_, at): [number, number] => [500 - 20 * at, 1])
      const { model } = cuttingModel(singleStock(1600, 0, items))
      const slides = Array.from({ length: types - 1 }, () => 0)
      const ring = random() < 0.5 ? 3 : 5
      const halves = Array.from({ length: ring }, (_, at) => {
        const counts = model.widths.map((_, type) => (type === at || type === (at + 1) % ring ? 1 : 0))
        if (at === 0 || counts[at - 1] === 1 || random() < 0.5) return counts
        counts[at] = 0
        counts[at - 1] = 1
        slides[at - 1] = 0.5
        return counts
      })
      const alone = model.widths.map((_, at) => model.widths.map((_, type) => (type === at ? 1 : 0)))
      const others = Array.from({ length: types }, () => model.widths.map(() => whole(2)))
      const columns = [...halves, ...alone, ...others].map((counts) => ({ stock: 0, counts }))
      const uses = [
        ...halves.map(() => 0.5),
        ...alone.map((_, at) => (at < ring ? 0 : 1)),
        ...others.map(() => 0),
        ...slides,
      ]
      expect(covers(model.demand, columns, uses)).toBe(true)
      for (const { set, least } of brokenHalfCuts(model, columns, uses, 20, seeded(round))) {
        seen++
        expect(leftOf(set, columns, uses)).toBeLessThan(least)
        for (let trial = 0; trial < 60; trial++) {
          const bars = uses.map(() => (random() < 0.35 ? 1 : 0))
          if (!covers(model.demand, columns, bars)) continue
          held++
          expect(leftOf(set, columns, bars)).toBeGreaterThanOrEqual(least)
        }
      }
    }
    expect(seen).toBeGreaterThan(50)
    expect(held).toBeGreaterThan(500)
  })
})

/** True if bars and slides (a place for a width handed down to the next narrower) cover what is wanted. */
function covers(demand: readonly number[], columns: readonly Column[], uses: readonly number[]): boolean {
  return demand.every((count, type) => {
    const held = columns.reduce(
      (sum, { counts }, at) => sum + (counts[type] as number) * (uses[at] as number),
      0,
    )
    const down = type + 1 < demand.length ? (uses[columns.length + type] as number) : 0
    const come = type > 0 ? (uses[columns.length + type - 1] as number) : 0
    return held + come - down >= count
  })
}

function leftOf(set: readonly number[], columns: readonly Column[], uses: readonly number[]): number {
  const bars = columns.reduce(
    (sum, { counts }, at) => sum + halfWeight(set, counts) * (uses[at] as number),
    0,
  )
  return slidesInto(set).reduce((sum, slide) => sum + (uses[columns.length + slide] as number), bars)
}
