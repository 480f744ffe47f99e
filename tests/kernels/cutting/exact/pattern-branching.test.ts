import { expect, it } from "vitest"
import { cuttingModel } from "../../../../src/kernels/cutting/cutting-model.ts"
import { possibleTotals } from "../../../../src/kernels/cutting/exact/bounds.ts"
import { Effort } from "../../../../src/kernels/cutting/exact/effort.ts"
import { branchedPlan } from "../../../../src/kernels/cutting/exact/pattern-branching.ts"
import { worthwhilePatterns } from "../../../../src/kernels/cutting/exact/pattern-enumeration.ts"
import { patternProgram } from "../../../../src/kernels/cutting/exact/pattern-program.ts"
import { cuttingFacts } from "../../../facts/cutting.ts"
import { singleStock } from "../problems.ts"

const small = cuttingFacts.filter(({ value, stock }) => value < 80 && stock < 5600)

it.each(small)(
  "finds the optimum over all patterns, and that one less is impossible: $what",
  async ({ stock, kerf, items, value }) => {
    const { model } = cuttingModel(singleStock(stock, kerf, items))
    const free = { bound: 0, prices: new Float64Array(model.widths.length), scale: 1, charges: [0] }
    const columns = worthwhilePatterns(model, free, 1, 10_000, new Effort(1000)) ?? []
    const asked = { target: 0, totals: possibleTotals(model, 1000), nodes: 10_000 }
    const effort = new Effort(10_000)
    const { plan, complete } = await branchedPlan(model, columns, { ...asked, atMost: 1000 }, effort)
    expect([complete, plan?.reduce((sum, { times }) => sum + times, 0)]).toEqual([true, value])
    expect(await branchedPlan(model, columns, { ...asked, atMost: value - 1 }, effort)).toEqual({
      plan: undefined,
      complete: true,
      bound: expect.any(Number),
    })
    const second = await patternProgram(model, columns, { atMost: 1000, target: 0 }, effort)
    expect([second.complete, second.plan?.reduce((sum, { times }) => sum + times, 0)]).toEqual([true, value])
  },
)
