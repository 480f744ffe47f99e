import { expect, it } from "vitest"
import { seeded } from "../../../../src/kernels/cutting/exact/seeded.ts"

it("repeats itself for a seed, differs between seeds and fills [0, 1) evenly", () => {
  const take = (seed: number) => Array.from({ length: 2000 }, seeded(seed))
  expect(take(1)).toEqual(take(1))
  expect(take(1)).not.toEqual(take(2))
  const mean = take(3).reduce((sum, value) => sum + value, 0) / 2000
  expect(Math.abs(mean - 0.5)).toBeLessThan(0.03)
  expect(take(4).every((value) => value >= 0 && value < 1)).toBe(true)
})
