import { expect, it } from "vitest"
import { Effort } from "../../../../src/kernels/cutting/exact/effort.ts"

it("ends by steps without a clock, by the clock with one", () => {
  const counted = new Effort(1)
  expect([counted.exhausted, counted.seconds]).toEqual([false, Number.POSITIVE_INFINITY])
  counted.spend(1e9)
  expect([counted.exhausted, counted.nodes(10, 10)]).toEqual([true, 1])
  let now = 0
  const timed = new Effort(500, () => now)
  timed.spend(1e12)
  expect([timed.exhausted, timed.seconds]).toEqual([false, 0.5])
  now = 500
  expect(timed.exhausted).toBe(true)
})
