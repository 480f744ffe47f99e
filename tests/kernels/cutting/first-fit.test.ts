import { expect, it } from "vitest"
import { cuttingModel } from "../../../src/kernels/cutting/cutting-model.ts"
import { firstFitPatterns } from "../../../src/kernels/cutting/first-fit.ts"
import { singleStock } from "./problems.ts"

it("fills as by hand: 6, 5, 4, 3, 2 into 10: 6 + 4, 5 + 3 + 2", () => {
  const { model } = cuttingModel(
    singleStock(10, 0, [
      [6, 1],
      [5, 1],
      [4, 1],
      [3, 1],
      [2, 1],
    ]),
  )
  expect(firstFitPatterns(model).map((pattern) => pattern.counts)).toEqual([
    [1, 0, 1, 0, 0],
    [0, 1, 0, 1, 1],
  ])
})

it("changes a bar to the cheapest stock that takes its pieces", () => {
  const stocks = [
    { id: "long", length: 4000, cost: 800 },
    { id: "short", length: 2000, cost: 500 },
  ]
  const { model } = cuttingModel({ ...singleStock(0, 0, [[1800, 1]]), stocks })
  expect(firstFitPatterns(model)).toMatchObject([{ stock: 1 }])
})
