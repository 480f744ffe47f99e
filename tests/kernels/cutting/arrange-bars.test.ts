import { expect, it } from "vitest"
import { arrangedBars, filledBars } from "../../../src/kernels/cutting/arrange-bars.ts"
import { cuttingModel } from "../../../src/kernels/cutting/cutting-model.ts"
import { singleStock } from "./problems.ts"

it("puts a narrower piece into a wider place and drops what is left over", () => {
  const { model } = cuttingModel(
    singleStock(1000, 0, [
      [600, 1],
      [400, 2],
    ]),
  )
  const filled = filledBars(model, [{ stock: 0, counts: [1, 0], times: 3 }])
  expect(filled).toEqual([
    { stock: 0, types: [0] },
    { stock: 0, types: [1] },
    { stock: 0, types: [1] },
  ])
})

it("counts the last cut only if something is left, and never more than is left", () => {
  const bars = (length: number) => {
    const problem = singleStock(length, 3, [[500, 2]])
    const { model } = cuttingModel(problem)
    return arrangedBars(problem, model, [{ stock: 0, types: [0, 0] }]).bars.map(({ kerfs, offcut }) => ({
      kerfs,
      offcut,
    }))
  }
  expect(bars(1003)).toEqual([{ kerfs: 3, offcut: 0 }])
  expect(bars(1005)).toEqual([{ kerfs: 5, offcut: 0 }])
  expect(bars(1100)).toEqual([{ kerfs: 6, offcut: 94 }])
})
