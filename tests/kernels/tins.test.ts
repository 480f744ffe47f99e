import { describe, expect, it } from "vitest"
import { leastCostTins, type Tin } from "../../src/kernels/tins.ts"

describe("whole tins for a need", () => {
  const sizes: Tin[] = [
    { litres: 2.5, price: "24.00" },
    { litres: 5, price: "39.00" },
    { litres: 10, price: "66.00" },
  ]

  it("40 m2, two coats at 12 m2 a litre and a tenth for waste are 7.33 l: a 5 and a 2.5 (common practice)", () => {
    const choice = leastCostTins(((40 * 2) / 12) * 1.1, sizes)
    expect(choice.tins).toEqual([
      { litres: 5, count: 1 },
      { litres: 2.5, count: 1 },
    ])
    expect(choice.litres).toBe(7.5)
    expect(choice.over).toBeCloseTo(7.5 - 7.334, 9)
    expect(choice.cost.toFixed(2)).toBe("63.00")
  })

  it("takes the large tin where it is cheaper than the fitting ones", () => {
    expect(leastCostTins(7.6, sizes).tins).toEqual([{ litres: 10, count: 1 }])
  })

  it("a need met exactly leaves nothing over; no need, no tin", () => {
    expect(leastCostTins(2.5, sizes)).toMatchObject({ tins: [{ litres: 2.5, count: 1 }], over: 0 })
    expect(leastCostTins(0, sizes).tins).toEqual([])
  })

  it("of equal cost takes what leaves less over, then fewer tins", () => {
    const even: Tin[] = [
      { litres: 1, price: "10" },
      { litres: 2, price: "20" },
      { litres: 3, price: "20" },
    ]
    expect(leastCostTins(1.5, even).tins).toEqual([{ litres: 2, count: 1 }])
    expect(leastCostTins(2.2, even).tins).toEqual([{ litres: 3, count: 1 }])
  })

  it("equals a search through every combination on 2,000 generated cases of up to six sizes", () => {
    const random = seeded(20270301)
    for (let trial = 0; trial < 2000; trial++) {
      const { need, tins } = generatedCase(random)
      const choice = leastCostTins(need, tins)
      const held = choice.tins.reduce((sum, row) => sum + row.litres * row.count, 0)
      expect(held).toBeGreaterThanOrEqual(need - 1e-9)
      expect(choice.litres).toBeCloseTo(held, 9)
      const best = everyCombination(need, tins)
      expect(Math.round(choice.cost.toNumber() * 100)).toBe(best.pence)
      expect(Math.round(choice.litres * 1000)).toBe(best.millilitres)
      expect(choice.tins.reduce((sum, row) => sum + row.count, 0)).toBe(best.count)
    }
  })
})

const SOLD = [0.25, 0.5, 0.75, 1, 2.5, 5, 10, 15, 20]

function generatedCase(random: () => number): { need: number; tins: Tin[] } {
  const count = 1 + Math.floor(random() * 6)
  const sizes = [...SOLD].sort(() => random() - 0.5).slice(0, count)
  const largest = Math.max(...sizes)
  const smallest = Math.min(...sizes)
  const need = Math.round(random() * Math.min(largest * 1.5, smallest * 14) * 1000) / 1000
  const tins = sizes.map((litres) => ({
    litres,
    price: (Math.round((3 + litres * (4 + random() * 8)) * 100) / 100).toFixed(2),
  }))
  return { need, tins }
}

/** Independent of the kernel: walks every count of every size up to what covers the need alone. */
function everyCombination(need: number, tins: Tin[]): { pence: number; millilitres: number; count: number } {
  const wanted = Math.ceil(Number((need * 1000).toPrecision(12)))
  const sizes = tins.map((tin) => Math.round(tin.litres * 1000))
  const pence = tins.map((tin) => Math.round(Number(tin.price) * 100))
  let best = { pence: Number.POSITIVE_INFINITY, millilitres: 0, count: 0 }
  const walk = (index: number, so: { pence: number; millilitres: number; count: number }) => {
    if (so.millilitres >= wanted) {
      const sooner = so.pence - best.pence || so.millilitres - best.millilitres || so.count - best.count
      if (sooner < 0) best = so
      return
    }
    if (index === sizes.length) return
    const most = Math.ceil((wanted - so.millilitres) / sizes[index]!)
    for (let count = 0; count <= most; count++) {
      walk(index + 1, {
        pence: so.pence + count * pence[index]!,
        millilitres: so.millilitres + count * sizes[index]!,
        count: so.count + count,
      })
    }
  }
  walk(0, { pence: 0, millilitres: 0, count: 0 })
  return best
}

function seeded(seed: number): () => number {
  let state = seed
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
}
