import { describe, expect, it } from "vitest"
import { lengthOf, serves } from "../../../../src/trades/floors/layout/boards.ts"

describe("what a stretch of board can serve as", () => {
  it.each([
    { from: 0, to: 1860, as: "either" },
    { from: 700, to: 1860, as: "starter" },
    { from: 0, to: 700, as: "finisher" },
    { from: 300, to: 700, as: "wall-to-wall" },
  ])(
    "from $from to $to: $as (common practice: laid left to right, a joint takes factory ends)",
    ({ from, to, as }) => {
      expect(serves({ board: 1, from, to }, 1860)).toBe(as)
      expect(lengthOf({ board: 1, from, to })).toBe(to - from)
    },
  )
})
