import { expect, it } from "vitest"
import { cuttingModel } from "../../../../src/kernels/cutting/cutting-model.ts"
import { Effort } from "../../../../src/kernels/cutting/exact/effort.ts"
import { boughtLengths, fewerLengths } from "../../../../src/kernels/cutting/exact/fewer-lengths.ts"
import { singleStock } from "../problems.ts"

it("buys two long ones in place of four short ones at the same cost, and proves it", async () => {
  const stocks = [
    { id: "short", length: 2000, cost: 500 },
    { id: "long", length: 4000, cost: 1000 },
  ]
  const { model } = cuttingModel({ ...singleStock(0, 0, [[2000, 4]]), stocks })
  const short = model.stocks.findIndex((stock) => stock.cost === 1)
  const patterns = [{ stock: short, counts: [1], times: 4 }]
  const proved = { bound: 4, prices: Float64Array.of(1), scale: 1, charges: [0, 0] }
  const fewer = await fewerLengths(model, { patterns, cost: 4, bound: 4, proved }, new Effort(1000))
  expect([boughtLengths(model, fewer.patterns), fewer.fewest]).toEqual([2, true])
  expect((await fewerLengths(model, { patterns, cost: 4, bound: 3, proved }, new Effort(1000))).fewest).toBe(
    false,
  )
})
