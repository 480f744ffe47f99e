import { describe, expect, it } from "vitest"
import type { CutBar } from "../../src/kernels/cutting/problem.ts"
import { Fault } from "../../src/kernels/fault.ts"
import { money } from "../../src/kernels/money.ts"
import { packsFor, packsTotal } from "../../src/orders/packs.ts"
import {
  boardProduct,
  eachProduct,
  lengthProduct,
  liquidProduct,
  rollProduct,
  tileProduct,
} from "../fixtures/products.ts"

/** Needs from nought to some packs, and close on either side of a whole number of them. */
const needs = (holds: number) =>
  [0.01, 0.5, 0.999, 1, 1.001, 2, 2.5, 3, 6.999, 7].map((packs) => packs * holds)

describe("whole packs", () => {
  const boardArea = (189 * 1860 * 8) / 1_000_000

  it.each([
    ["boards", boardProduct, boardArea],
    ["a roll good", rollProduct, 10],
    ["boxes", eachProduct, 200],
    ["tiles", tileProduct, 0.06 * 25],
  ])("of %s are never short and never one too many", (_, product, holds) => {
    for (const need of needs(holds)) {
      const { packs, bought } = packsFor(product, need)
      expect(packs).toHaveLength(1)
      expect(bought).toBeGreaterThan(need - holds * 1e-9)
      expect(bought - need).toBeLessThan(holds)
      expect(bought).toBeCloseTo((packs[0]?.count ?? 0) * holds, 9)
    }
  })

  it("a whole number of packs is not rounded up by binary noise", () => {
    expect(packsFor(rollProduct, 0.1 + 0.2 + 29.7).packs[0]?.count).toBe(3)
    expect(packsFor(boardProduct, boardArea * 3).packs[0]?.count).toBe(3)
  })

  it("boards are priced by the area that their packs hold, by hand: 8 x 189 x 1,860 = 2.812 m2 at 34.90 = 98.15", () => {
    const { packs } = packsFor(boardProduct, 5.5)
    expect(packs[0]?.count).toBe(2)
    expect(packs[0]?.price.toFixed(2)).toBe("98.15")
  })

  it("tins hold at least the need", () => {
    for (const need of [0.1, 2.5, 2.51, 7.4, 7.5, 12.6]) {
      const { packs, bought } = packsFor(liquidProduct, need)
      expect(bought).toBeGreaterThanOrEqual(need)
      expect(packs.reduce((sum, tin) => sum + tin.count * Number.parseFloat(tin.size), 0)).toBeCloseTo(
        bought,
        9,
      )
    }
  })
})

describe("lengths", () => {
  const bar = (stockId: string, inHand: boolean): CutBar => ({
    stockId,
    length: Number(stockId),
    cost: 0,
    inHand,
    pieces: [],
    kerfs: 0,
    endTrim: 0,
    offcut: 0,
    keep: false,
  })

  it("are bought as the saw plan says, less what is in hand", () => {
    const bars = [bar("2100", false), bar("4200", false), bar("2100", false), bar("4200", true)]
    const plan = { bars, unplaced: [], cost: 0, bound: 0, lengths: 3, proven: true, fewestProven: true }
    const { packs, bought } = packsFor(lengthProduct, 0, {
      product: lengthProduct,
      pieces: [],
      plan,
      cutBelow: null,
      spares: null,
    })
    expect(packs.map((pack) => [pack.size, pack.count, pack.price.toFixed(2)])).toEqual([
      ["2,100 length", 2, "13.20"],
      ["4,200 length", 1, "26.10"],
    ])
    expect(bought).toBeCloseTo(8.4, 9)
  })

  it("are bought with the spare lengths over the plan", () => {
    const plan = {
      bars: [bar("2100", false)],
      unplaced: [],
      cost: 0,
      bound: 0,
      lengths: 1,
      proven: true,
      fewestProven: true,
    }
    const spares = { length: 2100, count: 1, price: money("13.20"), longest: 2000, survives: 1 }
    const list = { product: lengthProduct, pieces: [], plan, cutBelow: null, spares }
    const { packs, bought } = packsFor(lengthProduct, 0, list)
    expect(packs.map((pack) => [pack.size, pack.count])).toEqual([["2,100 length", 2]])
    expect(bought).toBeCloseTo(4.2, 9)
  })

  it("cannot be bought without a saw plan", () => {
    expect(() => packsFor(lengthProduct, 12)).toThrow(Fault)
  })
})

describe("the price of packs", () => {
  it("is rounded to the penny line by line, halves up", () => {
    const { packs } = packsFor({ ...eachProduct, price: "1.005" }, 200)
    expect(packsTotal(packs).toFixed(2)).toBe("1.01")
    expect(packsTotal([...packs, ...packs]).toFixed(2)).toBe("2.02")
  })
})
