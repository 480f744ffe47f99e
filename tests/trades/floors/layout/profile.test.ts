import { describe, expect, it } from "vitest"
import type { Region } from "../../../../src/kernels/polygon/region.ts"
import { leastNeeds, needOf, profileOf } from "../../../../src/trades/floors/layout/profile.ts"

const figure = (...points: [number, number][]): Region => ({
  outline: points.map(([x, y]) => ({ x, y })),
  holes: [],
})
const level = { bottom: 0, top: 189 }
const full = figure([0, 0], [2000, 0], [2012, 189], [0, 189])
const first = figure([0, 60], [2000, 80], [2000, 189], [0, 189])
/* A last row under a breast from 800 to 2,000: full to 800, 70 wide beyond. */
const breast = figure([0, 0], [2000, 0], [2000, 70], [800, 70], [800, 189], [0, 189])

describe("what a run asks of its boards", () => {
  it("a full row has no profile, though its ends lean; its pieces need both long edges", () => {
    expect(profileOf(full, level)).toBeNull()
    expect(needOf(null, 189, { left: 0, right: 500 })).toEqual({ groove: true, tongue: true, width: 189 })
  })

  it("a tapered first row needs the tongue, and the width at its wider end", () => {
    const profile = profileOf(first, level)
    const need = needOf(profile, 189, { left: 0, right: 2000 })
    expect(need).toMatchObject({ groove: false, tongue: true })
    expect(need.width).toBeCloseTo(129, 2)
    expect(needOf(profile, 189, { left: 1000, right: 2000 }).width).toBeCloseTo(119, 2)
  })

  it("along a breast only the pieces wholly before it are strips", () => {
    const profile = profileOf(breast, level)
    expect(needOf(profile, 189, { left: 0, right: 1200 })).toEqual({ groove: true, tongue: true, width: 189 })
    const strip = needOf(profile, 189, { left: 800, right: 2000 })
    expect(strip).toMatchObject({ groove: true, tongue: false })
    expect(strip.width).toBeCloseTo(70, 2)
  })

  it("the least that pieces need leaves out what lies within the shortest piece of an end", () => {
    const narrowEnd = figure([0, 100], [100, 60], [2000, 60], [2000, 189], [0, 189])
    const needs = leastNeeds(profileOf(narrowEnd, level), 189, { left: 0, right: 2000, leastEnd: 300 })
    for (const { need } of needs) expect(need.width).toBeCloseTo(129, 1)
  })
})
