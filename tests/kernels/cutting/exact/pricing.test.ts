import { expect, it } from "vitest"
import { cuttingModel } from "../../../../src/kernels/cutting/cutting-model.ts"
import { Effort } from "../../../../src/kernels/cutting/exact/effort.ts"
import { Knapsack } from "../../../../src/kernels/cutting/exact/knapsack.ts"
import { Pricing } from "../../../../src/kernels/cutting/exact/pricing.ts"
import { tradeProblem } from "../problems.ts"

it("gives every stock the filling that a table gives, by search or by table", () => {
  const { model } = cuttingModel(tradeProblem(40, 9))
  const pricing = new Pricing(model, new Effort(1000))
  const values = model.widths.map((width, type) => width * 1000 + ((type * 7919) % 997))
  pricing.solve(values, model.demand)
  const table = new Knapsack(model.widths, Math.max(...model.stocks.map((stock) => stock.capacity)))
  table.solve(values, model.demand)
  model.stocks.forEach(({ capacity }, stock) => {
    expect(pricing.value(stock)).toBe(table.value(capacity))
    expect(
      pricing.counts(stock).reduce((sum, count, type) => sum + count * (values[type] as number), 0),
    ).toBe(table.value(capacity))
  })
  expect(pricing.exact).toBe(true)
})

it("leads a filling with each width that saves, none with more pieces than are wanted, the best of them as good as any", () => {
  const { model } = cuttingModel(tradeProblem(12, 9))
  const pricing = new Pricing(model, new Effort(1000))
  const values = model.widths.map((width, type) => width * 1000 + ((type * 7919) % 997))
  const led = pricing.led(
    values,
    model.demand,
    (value, stock) => value - (model.stocks[stock]?.capacity ?? 0) * 950,
  )
  expect(led?.length).toBeGreaterThan(0)
  for (const { stock, counts, saving } of led ?? []) {
    const { capacity } = model.stocks[stock] as { capacity: number }
    const width = counts.reduce((sum, count, type) => sum + count * (model.widths[type] as number), 0)
    const value = counts.reduce((sum, count, type) => sum + count * (values[type] as number), 0)
    expect(width).toBeLessThanOrEqual(capacity)
    expect(counts.every((count, type) => count <= (model.demand[type] as number))).toBe(true)
    expect(saving).toBe(value - capacity * 950)
  }
  pricing.solve(values, model.demand)
  const best = Math.max(...model.stocks.map(({ capacity }, stock) => pricing.value(stock) - capacity * 950))
  expect(Math.max(...(led ?? []).map(({ saving }) => saving))).toBe(best)
})
