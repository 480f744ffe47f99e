import { describe, expect, it } from "vitest"
import { cuttingModel, patternCost } from "../../../../src/kernels/cutting/cutting-model.ts"
import { arcFlow } from "../../../../src/kernels/cutting/exact/arc-flow.ts"
import { Effort } from "../../../../src/kernels/cutting/exact/effort.ts"
import { solvePortfolio } from "../../../../src/kernels/cutting/exact/portfolio.ts"
import { firstFitPatterns } from "../../../../src/kernels/cutting/first-fit.ts"
import { bruteForceCost } from "../brute-force.ts"
import { singleStock, smallProblem, tradeProblem } from "../problems.ts"

describe("the portfolio", () => {
  it("meets the optimum by trial, and proves it, on 400 small problems with limits and offcuts", async () => {
    for (let seed = 20_000; seed < 20_400; seed++) {
      const { model } = cuttingModel(smallProblem(seed))
      if (model.widths.length === 0) continue
      const solved = await solvePortfolio(model, firstFitPatterns(model), new Effort(10_000))
      const best = bruteForceCost(model)
      expect([seed, solved.cost, solved.bound]).toEqual([seed, best, best])
      expect(patternCost(model, solved.patterns)).toBe(best)
    }
  })

  it("agrees with the plain arc-flow model at trade size", async () => {
    for (let seed = 1; seed <= 6; seed++) {
      const { model } = cuttingModel(tradeProblem(10, seed))
      const solved = await solvePortfolio(model, firstFitPatterns(model), new Effort(10_000))
      const flow = await arcFlow(model, 20)
      expect(flow.proven).toBe(true)
      expect([solved.cost, solved.bound]).toEqual([flow.cost, flow.cost])
    }
  })

  it("gives an honest gap when the effort is gone at once", async () => {
    const { model } = cuttingModel(tradeProblem(40, 3))
    const solved = await solvePortfolio(model, firstFitPatterns(model), new Effort(0))
    expect(solved.bound).toBeLessThanOrEqual(solved.cost)
    const better = await solvePortfolio(model, firstFitPatterns(model), new Effort(10_000))
    expect(better.cost).toBeLessThanOrEqual(solved.cost)
    expect(better.bound).toBe(better.cost)
    expect(solved.bound).toBeLessThanOrEqual(better.cost)
  })

  it("proves that triplets without waste come out even", async () => {
    const items = Array.from({ length: 20 }, (_, turn) => [380 + 5 * turn, 251 + turn, 369 - 6 * turn]).flat()
    const { model } = cuttingModel(
      singleStock(
        1000,
        0,
        items.map((length) => [length, 1]),
      ),
    )
    const solved = await solvePortfolio(model, firstFitPatterns(model), new Effort(10_000))
    expect([solved.cost, solved.bound]).toEqual([20, 20])
  })
})
