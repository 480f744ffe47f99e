import { seeded } from "../../../src/kernels/cutting/exact/seeded.ts"
import type { CuttingProblem } from "../../../src/kernels/cutting/problem.ts"

/** A problem with one stock length at cost 1. */
export function singleStock(
  stock: number,
  kerf: number,
  items: readonly (readonly [number, number])[],
): CuttingProblem {
  return {
    kerf,
    stocks: [{ id: "stock", length: stock, cost: 1 }],
    items: items.map(([length, count], index) => ({ id: `item-${index}`, length, count })),
  }
}

/** A problem of trade size: several stock lengths with prices that favour none much, kerf 3, pieces as of a few rooms. */
export function tradeProblem(pieces: number, seed: number): CuttingProblem {
  const random = seeded(seed)
  const between = (low: number, high: number) => low + Math.floor(random() * (high - low + 1))
  const lengths = [2400, 3000, 3600, 4200, 4800, 5400].filter(() => random() < 0.7)
  if (!lengths.includes(4800)) lengths.push(4800)
  const stocks = lengths.map((length, index) => ({
    id: `stock-${index}`,
    length,
    cost: 5 * Math.round((length * (0.28 + 0.06 * random())) / 5),
  }))
  const items = Array.from({ length: pieces }, (_, index) => {
    const kind = random()
    const length = kind < 0.4 ? between(2040, 2240) : kind < 0.75 ? between(780, 1060) : between(120, 4300)
    return { id: `piece-${index}`, length, count: 1 }
  })
  return { kerf: 3, stocks, items }
}

/** A small mixed problem: limits, offcuts in hand, trims and tenths turn up at random. */
export function smallProblem(seed: number): CuttingProblem {
  const random = seeded(seed)
  const between = (low: number, high: number) => low + Math.floor(random() * (high - low + 1))
  const stocks = Array.from({ length: between(1, 3) }, (_, index) => ({
    id: `stock-${index}`,
    length: between(8, 20) * 300,
    cost: between(3, 30) * 50,
    ...(random() < 0.3 ? { available: between(0, 3) } : {}),
  }))
  const offcutsInHand =
    random() < 0.4 ? [{ id: "rack", length: between(300, 2500), available: between(1, 2) }] : []
  const items = Array.from({ length: between(1, 4) }, (_, index) => ({
    id: `piece-${index}`,
    length: random() < 0.1 ? between(300, 70_000) / 10 : between(150, 4000),
    count: between(1, 2),
  }))
  return {
    kerf: [0, 2.4, 3][between(0, 2)] as number,
    stocks,
    offcutsInHand,
    endTrim: random() < 0.3 ? between(0, 10) : 0,
    items,
    keepFrom: 300,
  }
}
