import { describe, expect, it } from "vitest"
import { fewestPossible } from "../../../../src/trades/floors/layout/bound.ts"
import type { EndLimits, Run } from "../../../../src/trades/floors/layout/end-plan.ts"

const limits: EndLimits = { boardLength: 1860, boardWidth: 189, kerf: 3, leastEnd: 300, stagger: 300 }
const rows = (count: number, right: number): Run[] =>
  Array.from({ length: count }, (_, index) => ({
    row: index + 1,
    name: `${index + 1}`,
    left: 0,
    right,
    profile: null,
  }))

describe("the bound on boards, by hand", () => {
  it("nothing to lay takes none, one short row one", () => {
    expect(fewestPossible([], limits)).toBe(0)
    expect(fewestPossible(rows(1, 900), limits)).toBe(1)
  })

  it("two rows of 930 and a saw cut do not come of one board", () => {
    expect(fewestPossible(rows(2, 930), limits)).toBe(2)
    expect(fewestPossible(rows(2, 928), limits)).toBe(1)
  })

  /* 3,580 from boards of 1,860: either two pieces of 1,720 and more, or a whole board and two that make up 1,720: two boards a row,
     though 15 rows of 3,580 are only 28.9 boards long. */
  it("15 rows of 3,580 take two boards each", () => {
    expect(fewestPossible(rows(15, 3580), limits)).toBe(30)
  })

  it("a first and a last row count together only where their widths do not fit one board", () => {
    const strip = (row: number, low: number, high: number): Run => ({
      row,
      name: `${row}`,
      left: 0,
      right: 1860,
      profile: [{ from: 0, to: 1860, low: [low, low], high: [high, high] }],
    })
    expect(fewestPossible([strip(1, 99, 189), strip(2, 0, 90)], limits)).toBe(1)
    expect(fewestPossible([strip(1, 95, 189), strip(2, 0, 94)], limits)).toBe(2)
  })
})
