import { expect, it } from "vitest"
import { cuttingModel } from "../../../src/kernels/cutting/cutting-model.ts"
import { withLargerOffcut } from "../../../src/kernels/cutting/larger-offcut.ts"
import { singleStock } from "./problems.ts"

it("exchanges and moves pieces until one bar has the room of all, by hand 300 + 300 -> 600", () => {
  const { model } = cuttingModel(
    singleStock(1000, 0, [
      [500, 1],
      [400, 1],
      [300, 1],
      [200, 1],
    ]),
  )
  const bars = withLargerOffcut(model, [
    { stock: 0, types: [0, 3] },
    { stock: 0, types: [1, 2] },
  ])
  const rooms = bars.map(
    (bar) => 10 - bar.types.reduce((sum, type) => sum + (model.widths[type] as number), 0),
  )
  expect(rooms.sort((a, b) => a - b)).toEqual([0, 6])
  expect(bars.flatMap((bar) => bar.types).sort()).toEqual([0, 1, 2, 3])
})
