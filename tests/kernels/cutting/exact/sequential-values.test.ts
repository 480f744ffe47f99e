import { expect, it } from "vitest"
import { cuttingModel } from "../../../../src/kernels/cutting/cutting-model.ts"
import { Effort } from "../../../../src/kernels/cutting/exact/effort.ts"
import { Pricing } from "../../../../src/kernels/cutting/exact/pricing.ts"
import { sequentialPlan } from "../../../../src/kernels/cutting/exact/sequential-values.ts"
import { singleStock } from "../problems.ts"

it("fills bar by bar, and has no plan where stock runs out", () => {
  const { model } = cuttingModel(
    singleStock(10, 0, [
      [6, 2],
      [4, 2],
      [3, 2],
    ]),
  )
  const pricing = new Pricing(model, new Effort(1000))
  const asked = { worth: model.widths, rounds: 3, target: 0, random: () => 0 }
  const plan =
    sequentialPlan(model, pricing, { demand: model.demand, limits: [9] }, asked, new Effort(1000)) ?? []
  expect(plan.reduce((sum, { times }) => sum + times, 0)).toBe(3)
  expect(
    sequentialPlan(model, pricing, { demand: model.demand, limits: [2] }, asked, new Effort(1000)),
  ).toBeUndefined()
})
