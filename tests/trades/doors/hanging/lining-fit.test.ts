import { describe, expect, it } from "vitest"
import { fitLining, liningSize } from "../../../../src/trades/doors/hanging/lining-fit.ts"
import { STRUCTURAL_OPENINGS } from "../../../facts/doors.ts"
import { seeded } from "./seeded.ts"

const gap = { least: 2, target: 3, most: 4 }
const trim = { hinge: 3, lock: 3, head: 0, foot: 20 }

describe("a new lining", () => {
  it.each(STRUCTURAL_OPENINGS)(
    "goes into the opening of a $what leaf",
    ({ leaf: [width, height], opening }) => {
      const foot = { least: 10, target: 10, most: 10 }
      const inside = liningSize({ width, height }, gap.target, foot.target)
      // width: leaf + 2 x 3 + 2 x 32 + 12; height: leaf + 3 + 10 + 32 + 6
      expect(inside.width + 64 + 12).toBe(opening[0])
      expect(inside.height + 32 + 6).toBe(opening[1])
      const fit = fitLining({
        widths: [opening[0]],
        heights: [opening[1]],
        leaf: { width, height, trim },
        thickness: 32,
        gap,
        foot,
        packing: { least: 5, most: 10 },
      })
      expect(fit.misses).toEqual([])
      expect(fit.packingSides[0]!.each).toBe(6)
      expect(fit.packingHead[0]!.over).toBe(6)
      expect([fit.internalWidth, fit.internalHeight]).toEqual([inside.width, inside.height])
    },
  )

  it("names an opening too wide to pack", () => {
    const fit = fitLining({
      widths: [870, 870, 870],
      heights: [2032],
      leaf: { width: 762, height: 1981, trim },
      thickness: 32,
      gap,
      foot: { least: 5, target: 8, most: 10 },
      packing: { least: 5, most: 10 },
    })
    // 870 - 64 - (762 + 8) = 36: 18 each side
    expect(fit.misses.map((miss) => [miss.edge, miss.kind, miss.figure])).toEqual([
      ["packing each side", "packing-over", 18],
      ["packing each side", "packing-over", 18],
      ["packing each side", "packing-over", 18],
    ])
  })

  it("fills 2,000 openings: packing, lining, gap, leaf, gap, lining, packing", () => {
    const draw = seeded(771)
    let met = 0
    const bad: number[] = []
    const isSame = (a: number[], b: number[]) => a.every((value, n) => Math.abs(value - b[n]!) < 1e-9)
    const isWithin = (values: number[], range: { least: number; most: number }) =>
      values.every((value) => value >= range.least - 1e-9 && value <= range.most + 1e-9)
    for (let n = 0; n < 2000; n++) {
      const width = draw.pick([610, 686, 762, 838])
      const thickness = draw.pick([27, 32])
      const widths = draw.three(width + 2 * thickness + draw.half(0, 34), 6)
      const heights = draw.three(1981 + thickness + draw.half(0, 34), 4)
      const packing = { least: draw.pick([0, 5]), most: 10 }
      const foot = { least: 5, target: 8, most: 10 }
      const fit = fitLining({
        widths,
        heights,
        leaf: { width, height: 1981, trim },
        thickness,
        gap,
        foot,
        packing,
      })
      const sides = fit.across.map(
        (point, at) =>
          2 * fit.packingSides[at]!.each + 2 * thickness + point.hingeGap + point.leaf + point.lockGap,
      )
      const uprights = fit.up.map(
        (point, at) => fit.packingHead[at]!.over + thickness + point.headGap + point.leaf + point.undercut,
      )
      const trims = [
        ...fit.across.map((point) => [point.hingeTrim, trim.hinge]),
        ...fit.across.map((point) => [point.lockTrim, trim.lock]),
        ...fit.up.map((point) => [point.footTrim, trim.foot]),
        ...fit.up.map((point) => [point.headTrim, trim.head]),
      ]
      if (!isSame(sides, widths) || !isSame(uprights, heights)) bad.push(n)
      if (trims.some(([taken, most]) => taken! < 0 || taken! > most!)) bad.push(n)
      if (fit.misses.length > 0) continue
      met++
      const gaps = [...fit.across.flatMap((p) => [p.hingeGap, p.lockGap]), ...fit.up.map((p) => p.headGap)]
      const packed = [...fit.packingSides.map((p) => p.each), ...fit.packingHead.map((p) => p.over)]
      if (!isWithin(gaps, gap) || !isWithin(packed, packing)) bad.push(n)
    }
    expect(bad).toEqual([])
    expect(met).toBeGreaterThan(200)
  })
})
