import { describe, expect, it } from "vitest"
import { cuttingModel } from "../../../src/kernels/cutting/cutting-model.ts"
import { singleStock } from "./problems.ts"

describe("the problem in whole numbers", () => {
  it("adds one kerf to each piece and each length, merges equal lengths and divides by what all share", () => {
    const { model } = cuttingModel({
      ...singleStock(2400, 3, [
        [797, 2],
        [397, 1],
        [797, 1],
      ]),
      stocks: [{ id: "a", length: 2397, cost: 500 }],
    })
    expect(model).toMatchObject({ widths: [2, 1], demand: [3, 1], divisor: 500, missingCost: 0 })
    expect(model.stocks).toMatchObject([{ capacity: 6, cost: 1 }])
  })

  it("drops stock that a longer one of no limit replaces at no more cost", () => {
    const stocks = [
      { id: "short", length: 2000, cost: 300 },
      { id: "long", length: 3000, cost: 300 },
    ]
    expect(cuttingModel({ ...singleStock(0, 0, [[900, 3]]), stocks }).model.stocks).toHaveLength(1)
  })

  it("stands in for missing lengths where all stock is limited", () => {
    const stocks = [{ id: "a", length: 2000, cost: 300, available: 1 }]
    const { model } = cuttingModel({ ...singleStock(0, 0, [[1500, 3]]), stocks })
    expect(model.stocks).toMatchObject([
      { limit: 1, cost: 1 },
      { source: -1, cost: 2 },
    ])
  })

  it("refuses broken figures as our fault", () => {
    expect(() => cuttingModel(singleStock(2400, 3, [[-1, 1]]))).toThrow("above 0")
    expect(() => cuttingModel(singleStock(2400, 3, [[100, 1.5]]))).toThrow("whole")
    expect(() =>
      cuttingModel({ ...singleStock(2400, 3, [[100, 1]]), stocks: [{ id: "a", length: 2400, cost: 1.5 }] }),
    ).toThrow("whole")
  })
})
