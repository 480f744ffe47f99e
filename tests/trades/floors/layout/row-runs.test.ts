import { describe, expect, it } from "vitest"
import type { Region } from "../../../../src/kernels/polygon/region.ts"
import { runsOf } from "../../../../src/trades/floors/layout/row-runs.ts"

const figure = (...points: [number, number][]): Region => ({
  outline: points.map(([x, y]) => ({ x, y })),
  holes: [],
})

describe("the runs of a floor", () => {
  /* 2,000 by 400, rows of 189 with a joint line at 100: rows of 100, 189 and 111. */
  it("three rows, the first and last ripped", () => {
    const runs = runsOf([figure([0, 0], [2000, 0], [2000, 400], [0, 400])], 100, 189)
    expect(runs.map(({ name, bottom, top }) => [name, bottom, top])).toEqual([
      ["1", -89, 100],
      ["2", 100, 289],
      ["3", 289, 478],
    ])
    expect(runs.map(({ profile }) => profile === null)).toEqual([false, true, false])
  })

  it("a row broken by a breast has two runs", () => {
    const room = figure(
      [0, 0],
      [2000, 0],
      [2000, 378],
      [1200, 378],
      [1200, 189],
      [800, 189],
      [800, 378],
      [0, 378],
    )
    expect(runsOf([room], 189, 189).map(({ name, left, right }) => [name, left, right])).toEqual([
      ["1", 0, 2000],
      ["2a", 0, 800],
      ["2b", 1200, 2000],
    ])
  })

  it("a sliver nobody can lay stays part of the gap", () => {
    expect(runsOf([figure([0, 0], [2000, 0], [2000, 191], [0, 191])], 189, 189)).toHaveLength(1)
  })
})
