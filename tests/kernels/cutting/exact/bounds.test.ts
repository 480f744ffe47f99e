import { describe, expect, it } from "vitest"
import { cuttingModel } from "../../../../src/kernels/cutting/cutting-model.ts"
import { fewestBars, martelloToth, possibleTotals } from "../../../../src/kernels/cutting/exact/bounds.ts"
import { cuttingFacts } from "../../../facts/cutting.ts"
import { bruteForceCost } from "../brute-force.ts"
import { singleStock, smallProblem } from "../problems.ts"

describe("bounds", () => {
  it.each(cuttingFacts)(
    "are never above the known optimum: $what ($source)",
    ({ stock, kerf, items, value }) => {
      const { model } = cuttingModel(singleStock(stock, kerf, items))
      expect(martelloToth(model.widths, model.demand, model.stocks[0]?.capacity ?? 0)).toBeLessThanOrEqual(
        value,
      )
      expect(possibleTotals(model, value).next(0)).toBeLessThanOrEqual(value)
    },
  )

  it("count each piece over half a bar: four 6 and four 4 into 10, by hand four bars", () => {
    expect(martelloToth([6, 4], [4, 4], 10)).toBe(4)
    expect(martelloToth([6, 5], [4, 1], 10)).toBe(5)
  })

  it("allow only totals that lengths can come to: 7 and 11 make 14, 18, 21, not 15 to 17", () => {
    const stocks = [
      { id: "a", length: 1000, cost: 7 },
      { id: "b", length: 1500, cost: 11 },
    ]
    const { model } = cuttingModel({ ...singleStock(0, 0, [[500, 4]]), stocks })
    const totals = possibleTotals(model, 30)
    expect([totals.next(0), totals.next(15), totals.before(18), totals.before(14)]).toEqual([14, 18, 14, -1])
    expect(fewestBars(model, 14, 5)).toBe(2)
  })

  it("stay at or below the optimum by trial on 300 small problems", () => {
    for (let seed = 0; seed < 300; seed++) {
      const { model } = cuttingModel(smallProblem(seed))
      const best = bruteForceCost(model)
      expect(possibleTotals(model, best).next(0)).toBeLessThanOrEqual(best)
    }
  })
})
