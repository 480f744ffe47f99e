import { expect, it } from "vitest"
import { cuttingModel } from "../../../../src/kernels/cutting/cutting-model.ts"
import { Effort } from "../../../../src/kernels/cutting/exact/effort.ts"
import { worthwhilePatterns } from "../../../../src/kernels/cutting/exact/pattern-enumeration.ts"
import { singleStock } from "../problems.ts"

/** Prices of nothing: with a gap of one bar, every full pattern is worth listing. */
const free = (types: number) => ({ bound: 0, prices: new Float64Array(types), scale: 1, charges: [0] })

it("lists the patterns that leave no room for a further or a wider piece, by hand", () => {
  const { model } = cuttingModel(
    singleStock(17, 0, [
      [3, 25],
      [5, 20],
      [9, 15],
    ]),
  )
  const found = worthwhilePatterns(model, free(3), 1, 100, new Effort(1000))?.map((column) => column.counts)
  expect(found).toEqual(
    [
      [1, 1, 1],
      [0, 3, 0],
      [0, 2, 2],
      [0, 1, 4],
      [0, 0, 5],
    ].filter(([nine, five, three]) => isFull(nine as number, five as number, three as number)),
  )
})

function isFull(nine: number, five: number, three: number): boolean {
  const room = 17 - 9 * nine - 5 * five - 3 * three
  return room < 3 && !(three > 0 && room >= 2) && !(five > 0 && room >= 4) && !(three > 0 && room >= 6)
}

it("gives up when there are too many, and shuts what is too dear for the gap", () => {
  const { model } = cuttingModel(
    singleStock(100, 0, [
      [11, 9],
      [13, 9],
      [17, 9],
      [19, 9],
    ]),
  )
  expect(worthwhilePatterns(model, free(4), 1, 3, new Effort(1000))).toBeUndefined()
  const prices = Float64Array.from(model.widths, (width) => width)
  const even =
    worthwhilePatterns(model, { bound: 0, prices, scale: 100, charges: [0] }, 0, 1000, new Effort(1000)) ?? []
  expect(even.length).toBeGreaterThan(0)
  for (const { counts } of even)
    expect(counts.reduce((sum, count, type) => sum + count * (model.widths[type] as number), 0)).toBe(100)
})
