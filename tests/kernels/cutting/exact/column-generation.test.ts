import { describe, expect, it } from "vitest"
import { cuttingModel } from "../../../../src/kernels/cutting/cutting-model.ts"
import {
  generateColumns,
  priceScale,
  wholeBound,
} from "../../../../src/kernels/cutting/exact/column-generation.ts"
import { Effort } from "../../../../src/kernels/cutting/exact/effort.ts"
import { Master } from "../../../../src/kernels/cutting/exact/master.ts"
import { Pricing } from "../../../../src/kernels/cutting/exact/pricing.ts"
import { singleStock } from "../problems.ts"

/** Values of the linear program as published or recomputed beside the worked examples. */
const relaxed: [string, number, [number, number][], number][] = [
  [
    "lumber",
    17,
    [
      [3, 25],
      [5, 20],
      [9, 15],
    ],
    18.333,
  ],
  [
    "lumber yard",
    25,
    [
      [7, 5000],
      [9, 1200],
      [11, 300],
    ],
    2166.667,
  ],
  [
    "raws",
    100,
    [
      [45, 97],
      [36, 610],
      [31, 395],
      [14, 211],
    ],
    452.25,
  ],
  [
    "110 in",
    110,
    [
      [20, 48],
      [45, 35],
      [50, 24],
      [55, 10],
      [75, 8],
    ],
    46.25,
  ],
  [
    "reels",
    100,
    [
      [60, 30],
      [48, 50],
      [36, 25],
      [24, 90],
    ],
    76.25,
  ],
  [
    "logs",
    2000,
    [
      [255, 10],
      [750, 7],
      [550, 13],
    ],
    8.143,
  ],
]

describe("column generation", () => {
  it.each(relaxed)("reaches the value of the linear program: %s", async (_, stock, items, value) => {
    const { model } = cuttingModel(singleStock(stock, 0, items))
    const effort = new Effort(10_000)
    const master = await Master.open(model)
    for (const [type] of model.widths.entries())
      master.add({ stock: 0, counts: model.widths.map((_, at) => (at === type ? 1 : 0)) })
    const asked = {
      demand: model.demand,
      limits: [Number.POSITIVE_INFINITY],
      enough: Number.POSITIVE_INFINITY,
      rounds: 1000,
    }
    const { solution, proved } = generateColumns(master, model, new Pricing(model, effort), asked, effort)
    master.close()
    expect(solution.value).toBeCloseTo(value, 2)
    expect(proved.bound).toBeLessThanOrEqual(solution.value + 1e-9)
    expect(proved.bound).toBeCloseTo(value, 2)
  })

  it("rounds a bound up, but not for binary noise, and keeps sums of prices exact", () => {
    expect([wholeBound(61.2), wholeBound(61 + 1e-9), wholeBound(60.9999)]).toEqual([62, 61, 61])
    const { model } = cuttingModel(singleStock(100, 0, [[3, 5000]]))
    expect(priceScale(model) * 5000).toBeLessThan(2 ** 53)
  })
})
