import { expect, it } from "vitest"
import { cuttingModel } from "../../../../src/kernels/cutting/cutting-model.ts"
import { Effort } from "../../../../src/kernels/cutting/exact/effort.ts"
import { patternProgram } from "../../../../src/kernels/cutting/exact/pattern-program.ts"
import { singleStock } from "../problems.ts"

it("takes two patterns that go together, and knows when there is no plan", async () => {
  const { model } = cuttingModel(
    singleStock(10, 0, [
      [5, 1],
      [4, 1],
      [3, 1],
      [2, 2],
    ]),
  )
  const columns = [
    [1, 1, 0, 0],
    [1, 0, 1, 1],
    [0, 1, 1, 1],
    [0, 0, 0, 2],
  ].map((counts) => ({ stock: 0, counts }))
  const best = await patternProgram(model, columns, { atMost: 9, target: 0 }, new Effort(1000))
  expect([best.complete, best.plan?.reduce((sum, { times }) => sum + times, 0)]).toEqual([true, 2])
  expect(await patternProgram(model, columns, { atMost: 1, target: 0 }, new Effort(1000))).toEqual({
    plan: undefined,
    complete: true,
  })
  expect(await patternProgram(model, [], { atMost: 9, target: 0 }, new Effort(1000))).toEqual({
    plan: undefined,
    complete: true,
  })
})
