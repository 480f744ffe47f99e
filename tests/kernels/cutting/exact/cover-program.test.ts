import { expect, it } from "vitest"
import { cuttingModel } from "../../../../src/kernels/cutting/cutting-model.ts"
import { coverProgram } from "../../../../src/kernels/cutting/exact/cover-program.ts"
import { singleStock } from "../problems.ts"

it("has a row for each width and each limited stock, and lets a wide place hold a narrow piece", () => {
  const stocks = [
    { id: "a", length: 10, cost: 5, available: 1 },
    { id: "b", length: 8, cost: 7 },
  ]
  const { model } = cuttingModel({
    ...singleStock(0, 0, [
      [6, 1],
      [4, 3],
    ]),
    stocks,
  })
  const data = coverProgram(model, [{ stock: 0, counts: [1, 1] }], Number.POSITIVE_INFINITY)
  expect(data).toMatchObject({
    numRows: 3,
    numCols: 2,
    rowLower: [1, 3, Number.NEGATIVE_INFINITY],
    rowUpper: [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, 1],
  })
  expect(data.matrix).toMatchObject({ starts: [0, 3, 5], indices: [0, 1, 2, 0, 1], values: [1, 1, 1, -1, 1] })
})
