import { expect, it } from "vitest"
import { filledBars } from "../../../../src/kernels/cutting/arrange-bars.ts"
import { cuttingModel } from "../../../../src/kernels/cutting/cutting-model.ts"
import { divedPlan } from "../../../../src/kernels/cutting/exact/diving.ts"
import { Effort } from "../../../../src/kernels/cutting/exact/effort.ts"
import { Master } from "../../../../src/kernels/cutting/exact/master.ts"
import { Pricing } from "../../../../src/kernels/cutting/exact/pricing.ts"
import { sequentialPlan } from "../../../../src/kernels/cutting/exact/sequential-values.ts"
import { tradeProblem } from "../problems.ts"

it("dives to a plan that holds every piece and leaves the master as it was", async () => {
  const { model } = cuttingModel(tradeProblem(25, 5))
  const effort = new Effort(10_000)
  const pricing = new Pricing(model, effort)
  const master = await Master.open(model)
  for (const [type] of model.widths.entries())
    master.add({ stock: 0, counts: model.widths.map((_, at) => (at === type ? 1 : 0)) })
  const before = master.solve(effort).value
  const worth = { rounds: 1, target: 0, random: () => 0.5 }
  const finish = (left: { demand: readonly number[]; limits: readonly number[] }, prices: Float64Array) =>
    sequentialPlan(model, pricing, left, { ...worth, worth: prices }, effort)
  const plan =
    (await divedPlan(
      master,
      model,
      pricing,
      { finish, settle: async () => [], little: 0, target: 0, random: () => 0 },
      effort,
    )) ?? []
  expect(filledBars(model, plan).flatMap((bar) => bar.types)).toHaveLength(25)
  expect(master.solve(effort).value).toBeLessThanOrEqual(before)
  master.close()
})
