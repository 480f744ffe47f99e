import { existsSync, readdirSync, readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { cutPlan, firstFitDecreasing } from "../../../src/kernels/cutting/cut-plan.ts"
import type { CuttingProblem } from "../../../src/kernels/cutting/problem.ts"
import { verifyCutPlan } from "../../../src/kernels/cutting/verify-cut-plan.ts"
import { cuttingFacts, mixedStockFact } from "../../facts/cutting.ts"
import { singleStock, smallProblem, tradeProblem } from "./problems.ts"

describe("worked examples", () => {
  it.each(cuttingFacts)("$what: $value ($source)", async ({ stock, kerf, items, value }) => {
    const problem = singleStock(stock, kerf, items)
    const plan = await cutPlan(problem)
    verifyCutPlan(problem, plan)
    expect(plan).toMatchObject({ cost: value, lengths: value, bound: value, proven: true, unplaced: [] })
  })

  it.each([0, 3])(
    `${mixedStockFact.what}, kerf %i: ${mixedStockFact.value} (${mixedStockFact.source})`,
    async (kerf) => {
      const stocks = mixedStockFact.stocks.map((length) => ({ id: String(length), length, cost: length }))
      const problem = { ...singleStock(0, kerf, mixedStockFact.items), stocks }
      const plan = await cutPlan(problem)
      verifyCutPlan(problem, plan)
      expect(plan).toMatchObject({ cost: mixedStockFact.value, bound: mixedStockFact.value, proven: true })
    },
  )

  it("leaves 34 in each bar of the door faces, of which the last cut takes 3", async () => {
    const plan = await cutPlan(
      singleStock(5100, 3, [
        [2070, 12],
        [920, 6],
      ]),
    )
    for (const bar of plan.bars)
      expect({ kerfs: bar.kerfs, offcut: bar.offcut }).toEqual({ kerfs: 9, offcut: 31 })
  })
})

describe("what the saw and the rack demand", () => {
  it("uses the rack first and says so", async () => {
    const problem: CuttingProblem = {
      ...singleStock(2400, 3, [
        [1200, 1],
        [900, 2],
      ]),
      offcutsInHand: [{ id: "rack", length: 1000, available: 1 }],
    }
    const plan = await cutPlan(problem)
    verifyCutPlan(problem, plan)
    expect(plan.bars.map((bar) => bar.stockId)).toEqual(["rack", "stock"])
    expect(plan.lengths).toBe(1)
  })

  it("squares both factory ends of a bought length, not of an offcut in hand", async () => {
    const even: CuttingProblem = { ...singleStock(2010, 0, [[1000, 2]]), endTrim: 5 }
    expect((await cutPlan(even)).lengths).toBe(1)
    expect((await cutPlan({ ...even, endTrim: 6 })).lengths).toBe(2)
    const rack: CuttingProblem = {
      ...even,
      stocks: [],
      endTrim: 6,
      offcutsInHand: [{ id: "rack", length: 2000, available: 1 }],
    }
    expect((await cutPlan(rack)).unplaced).toEqual([])
  })

  it("buys fewer lengths where the cost is the same", async () => {
    const problem: CuttingProblem = {
      kerf: 0,
      stocks: [
        { id: "short", length: 2000, cost: 500 },
        { id: "long", length: 4000, cost: 1000 },
      ],
      items: [{ id: "a", length: 2000, count: 4 }],
    }
    const plan = await cutPlan(problem)
    expect(plan).toMatchObject({ cost: 2000, lengths: 2, proven: true, fewestProven: true })
  })

  it("leaves one large offcut rather than two small ones", async () => {
    const plan = await cutPlan({ ...singleStock(3000, 0, [[1000, 4]]), keepFrom: 500 })
    expect(plan.bars.map((bar) => bar.offcut).sort((a, b) => a - b)).toEqual([0, 2000])
  })

  it("sets aside what is longer than any stock, and what stock runs out for, as data", async () => {
    const problem: CuttingProblem = {
      kerf: 3,
      stocks: [{ id: "only", length: 2400, cost: 700, available: 1 }],
      items: [
        { id: "leg", length: 2100, count: 2 },
        { id: "beam", length: 2500, count: 1 },
      ],
    }
    const plan = await cutPlan(problem)
    verifyCutPlan(problem, plan)
    expect(plan.unplaced).toEqual([
      { itemId: "beam", length: 2500, count: 1, reason: "longer-than-any-stock" },
      { itemId: "leg", length: 2100, count: 1, reason: "stock-run-out" },
    ])
    expect(plan).toMatchObject({ cost: 700, lengths: 1, proven: true })
  })

  it("plans nothing for no pieces and refuses lengths finer than a tenth", async () => {
    expect(await cutPlan(singleStock(2400, 3, []))).toMatchObject({ bars: [], cost: 0, proven: true })
    await expect(cutPlan(singleStock(2400, 3, [[100.04, 1]]))).rejects.toThrow("tenths")
  })

  it("gives the same plan twice and leaves the problem as it was", async () => {
    const problem = tradeProblem(15, 7)
    const before = structuredClone(problem)
    expect(await cutPlan(problem)).toEqual(await cutPlan(problem))
    expect(problem).toEqual(before)
  })
})

describe("generated plans", () => {
  it("adds up to the millimetre in 10,000 plans, never above first-fit decreasing", async () => {
    for (let seed = 0; seed < 10_000; seed++) {
      const problem = smallProblem(seed)
      const plan = await cutPlan(problem)
      verifyCutPlan(problem, plan)
      const byHand = firstFitDecreasing(problem)
      verifyCutPlan(problem, byHand)
      if (byHand.unplaced.length === plan.unplaced.length) expect(plan.cost).toBeLessThanOrEqual(byHand.cost)
      expect(plan.proven).toBe(true)
    }
  })
})

/** Open instances beside the project, read where they are at hand. */
const data = new URL("../../../../shared/data/", import.meta.url)
const files = ["cutting", "cutting-trade"].flatMap((folder) => {
  const path = new URL(`${folder}/`, data)
  return existsSync(path)
    ? readdirSync(path)
        .filter((name) => name.endsWith(".json"))
        .map((name) => new URL(name, path))
    : []
})

describe.skipIf(files.length === 0)("open instances", () => {
  it.each(files.map((file) => ({ file, name: file.pathname.split("/").at(-1) })))(
    "$name to its published optimum",
    async ({ file }) => {
      const { stockLength, stocks, kerf, items, bestKnown } = JSON.parse(readFileSync(file, "utf8"))
      const problem = singleStock(
        stockLength ?? 0,
        kerf ?? 0,
        items.map((item: { length: number; count: number }) => [item.length, item.count]),
      )
      if (stocks !== undefined)
        problem.stocks = stocks.map((stock: object, index: number) => ({ id: `stock-${index}`, ...stock }))
      const plan = await cutPlan(problem)
      verifyCutPlan(problem, plan)
      expect(plan).toMatchObject({ cost: bestKnown, bound: bestKnown, proven: true })
    },
  )
})
