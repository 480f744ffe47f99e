import { describe, expect, it } from "vitest"
import { wholeUp } from "../../../src/trades/floors/whole-up.ts"

describe("rounded up", () => {
  it.each([
    [400 * 1.1, 440],
    [440.001, 441],
    [7, 7],
    [6.67, 7],
    [0, 0],
  ])("%d is %d", (value, whole) => {
    expect(wholeUp(value)).toBe(whole)
  })
})
