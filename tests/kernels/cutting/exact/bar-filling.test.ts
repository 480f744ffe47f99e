import { expect, it } from "vitest"
import { bestFilling } from "../../../../src/kernels/cutting/exact/bar-filling.ts"

it("is not led astray by the best rate: 6 + 4 fills 10, 7 does not", () => {
  const found = bestFilling([7, 6, 4], { values: [8, 6, 4], available: [1, 1, 1], capacity: 10, steps: 1000 })
  expect(found).toMatchObject({ counts: [0, 1, 1], value: 10, exact: true })
})

it("says so when the steps run out", () => {
  const widths = Array.from({ length: 30 }, (_, index) => 1001 + 2 * index)
  const found = bestFilling(widths, {
    values: widths,
    available: widths.map(() => 1),
    capacity: 10_000,
    steps: 50,
  })
  expect(found.exact).toBe(false)
  expect(found.value).toBeGreaterThan(8000)
})
