import { describe, expect, it } from "vitest"
import { fitAcross, fitUp } from "../../../../src/trades/doors/hanging/fit.ts"
import { FIRE_GAPS } from "../../../facts/doors.ts"
import { seeded } from "./seeded.ts"

const gap = { least: FIRE_GAPS.least, target: FIRE_GAPS.target, most: FIRE_GAPS.most }
const foot = { least: 5, target: 8, most: 10 }

describe("a leaf between two jambs", () => {
  it("takes a 762 leaf untrimmed in 768 with 3 each side", () => {
    const { points, misses } = fitAcross([768, 768, 768], 762, { hinge: 3, lock: 3 }, gap)
    expect(points.map((point) => [point.hingeGap, point.lockGap, point.hingeTrim, point.lockTrim])).toEqual([
      [3, 3, 0, 0],
      [3, 3, 0, 0],
      [3, 3, 0, 0],
    ])
    expect(misses).toEqual([])
  })

  it("names the bottom of 768/767/771 as 1 mm too wide for 762: 9 mm to share, 4 + 4 is the most", () => {
    const { misses } = fitAcross([768, 767, 771], 762, { hinge: 3, lock: 3 }, gap)
    expect(misses).toEqual([
      { edge: "lock edge", at: "bottom", figure: 5, limit: 4, kind: "gap-over", over: 0 },
    ])
  })

  it("takes the lock edge before the hinge edge, and the hinge edge evenly", () => {
    const { points, misses } = fitAcross([763, 764, 763], 762, { hinge: 3, lock: 3 }, gap)
    expect(misses).toEqual([])
    expect(new Set(points.map((point) => point.hingeTrim)).size).toBe(1)
    expect(points.every((point) => point.lockTrim <= 3 && point.hingeTrim <= 3)).toBe(true)
  })

  it("says how much too much must come off: 757 for 762 wants 9, data allow 6, least gaps 2 + 2 leave 3 wanting", () => {
    const { misses } = fitAcross([757, 757, 757], 762, { hinge: 3, lock: 3 }, gap)
    expect(misses.map((miss) => [miss.kind, miss.over])).toEqual([
      ["gap-under", 3],
      ["gap-under", 3],
      ["gap-under", 3],
    ])
  })
})

describe("a leaf between head and floor", () => {
  it("cuts 8 off the foot of 1981 in 1984: 3 at the head, 8 under the foot", () => {
    const { points } = fitUp([1984, 1984, 1984], 1981, { head: 0, foot: 20 }, { head: gap, foot })
    expect(points[0]).toEqual({
      at: "left",
      opening: 1984,
      headGap: 3,
      headTrim: 0,
      leaf: 1973,
      footTrim: 8,
      undercut: 8,
    })
  })

  it("never cuts the head where its data say nought", () => {
    const { points, misses } = fitUp([1984, 1988, 1984], 1981, { head: 0, foot: 20 }, { head: gap, foot })
    expect(points.every((point) => point.headTrim === 0)).toBe(true)
    expect(misses.length).toBeGreaterThan(0)
  })
})

describe("2,000 openings", () => {
  const draw = seeded(1927)
  const cases = Array.from({ length: 2000 }, () => {
    const leaf = draw.pick([610, 686, 762, 838, 626, 726, 826])
    const height = draw.pick([1981, 2040])
    return {
      leaf,
      height,
      widths: draw.three(leaf + draw.half(-8, 14), 4),
      heights: draw.three(height + draw.half(-20, 20), 4),
      limits: {
        hinge: draw.half(0, 6),
        lock: draw.half(0, 6),
        head: draw.half(0, 3),
        foot: draw.half(0, 25),
      },
      foot: draw.pick([
        foot,
        { least: 10, target: 10, most: 10 },
        { least: 0, target: 3, most: 3 },
        { least: 5, target: 8, most: 22 },
      ]),
    }
  })

  it("are filled to the millimetre at each point, and no trim goes over the leaf's limit", () => {
    const isSame = (a: number, b: number) => Math.abs(a - b) < 1e-9
    const isWithin = (trim: number, limit: number) => trim >= 0 && trim <= limit
    const bad = cases.filter((each) => {
      const across = fitAcross(each.widths, each.leaf, each.limits, gap).points.every(
        (point, n) =>
          isSame(point.hingeGap + point.leaf + point.lockGap, each.widths[n]!) &&
          isSame(point.leaf + point.hingeTrim + point.lockTrim, each.leaf) &&
          isWithin(point.hingeTrim, each.limits.hinge) &&
          isWithin(point.lockTrim, each.limits.lock),
      )
      const up = fitUp(each.heights, each.height, each.limits, { head: gap, foot: each.foot }).points.every(
        (point, n) =>
          isSame(point.headGap + point.leaf + point.undercut, each.heights[n]!) &&
          isSame(point.leaf + point.headTrim + point.footTrim, each.height) &&
          isWithin(point.headTrim, each.limits.head) &&
          isWithin(point.footTrim, each.limits.foot),
      )
      return !across || !up
    })
    expect(bad).toEqual([])
  })

  // Independent of the search: let u = hinge trim less hinge gap. Every lock gap w - W + u + trim lies in [least, most] for some
  // trim up to its limit if and only if u <= most - max(w - W) and u >= least - limit - min(w - W), with -most <= u <= limit - least.
  it("have a finding if and only if no way of trimming keeps all gaps within limits", () => {
    let met = 0
    const bad = cases.filter((each) => {
      const slack = each.widths.map((width) => width - each.leaf)
      const low = Math.max(gap.least - each.limits.lock - Math.min(...slack), -gap.most)
      const high = Math.min(gap.most - Math.max(...slack), each.limits.hinge - gap.least)
      const across = fitAcross(each.widths, each.leaf, each.limits, gap)
      const spare = each.heights.map((height) => height - each.height)
      const lowest = Math.max(gap.least - each.limits.head - Math.min(...spare), -each.foot.most)
      const highest = Math.min(gap.most - Math.max(...spare), each.limits.foot - each.foot.least)
      const up = fitUp(each.heights, each.height, each.limits, { head: gap, foot: each.foot })
      if (low <= high && lowest <= highest) met++
      const isRight = (misses: readonly unknown[], can: boolean) => (misses.length === 0) === can
      return !isRight(across.misses, low <= high) || !isRight(up.misses, lowest <= highest)
    })
    expect(bad).toEqual([])
    expect(met).toBeGreaterThan(100)
    expect(met).toBeLessThan(1900)
  })
})
