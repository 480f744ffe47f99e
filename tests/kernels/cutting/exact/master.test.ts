import { expect, it } from "vitest"
import { cuttingModel } from "../../../../src/kernels/cutting/cutting-model.ts"
import { coverProgram } from "../../../../src/kernels/cutting/exact/cover-program.ts"
import { Effort } from "../../../../src/kernels/cutting/exact/effort.ts"
import { Master, solver } from "../../../../src/kernels/cutting/exact/master.ts"
import { singleStock } from "../problems.ts"

const { model } = cuttingModel(
  singleStock(10, 0, [
    [6, 1],
    [4, 3],
  ]),
)
const columns = [
  { stock: 0, counts: [1, 1] },
  { stock: 0, counts: [0, 2] },
]

it("covers at least cost, by hand 2, takes a column once only and asks for less", async () => {
  const master = await Master.open(model)
  const effort = new Effort(1000)
  expect(columns.map((column) => master.add(column))).toEqual([true, true])
  expect(master.add({ stock: 0, counts: [0, 2] })).toBe(false)
  const { value, prices } = master.solve(effort)
  expect(value).toBeCloseTo(2, 9)
  expect(
    Array.from(prices).reduce((sum, price, type) => sum + price * (model.demand[type] as number), 0),
  ).toBeCloseTo(2, 9)
  master.ask([0, 2], [Number.POSITIVE_INFINITY])
  expect(master.solve(effort).value).toBeCloseTo(1, 9)
  master.close()
})

it("says the same in one go", async () => {
  const highs = await solver()
  const value = highs.withModel(coverProgram(model, columns, highs.infinity), (program) => {
    program.options.set({ output_flag: false })
    program.run()
    return program.getObjectiveValue()
  })
  expect(value).toBeCloseTo(2, 9)
})
