import { intersection as otherIntersection } from "polyclip-ts"
import { describe, expect, it } from "vitest"
import {
  difference,
  halfPlane,
  inset,
  intersection,
  offset,
  union,
} from "../../../src/kernels/polygon/clip.ts"
import { regionArea, regionPerimeter } from "../../../src/kernels/polygon/measure.ts"
import { type Region, regionOf } from "../../../src/kernels/polygon/region.ts"
import { generatedRegion, seeded, whole } from "./outlines.ts"

function box(left: number, bottom: number, right: number, top: number): Region {
  return regionOf([
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ])
}
const areaOf = (regions: Region[]) => regions.reduce((sum, region) => sum + regionArea(region), 0)

describe("offset", () => {
  it("takes a gap off all round, and grows a hole by it: 4000 x 3000 less 12, with a hole 1000 x 500", () => {
    const room = { ...box(0, 0, 4000, 3000), holes: [box(1000, 1000, 2000, 1500).outline] }
    const [floor] = inset(room, 12)
    expect(regionArea(floor!)).toBe(3976 * 2976 - 1024 * 524)
    expect(regionPerimeter(floor!)).toBe(2 * (3976 + 2976) + 2 * (1024 + 524))
  })

  it("keeps corners sharp, so that out and in again gives the same square", () => {
    expect(offset(box(0, 0, 1000, 1000), 25.5)[0]!.outline).toContainEqual({ x: -25.5, y: -25.5 })
    expect(areaOf(inset(offset(box(0, 0, 1000, 1000), 25.5)[0]!, 25.5))).toBe(1_000_000)
  })

  it("falls into two where a neck is too narrow, and vanishes where nothing is left", () => {
    const rooms = union([box(0, 0, 1000, 1000), box(1000, 495, 2000, 505), box(2000, 0, 3000, 1000)])
    expect(rooms).toHaveLength(1)
    expect(inset(rooms[0]!, 10)).toHaveLength(2)
    expect(inset(box(0, 0, 20, 1000), 10)).toEqual([])
  })
})

describe("clipping", () => {
  it("keeps what lies left or right of a line", () => {
    const half = halfPlane(box(0, 0, 1000, 1000), { x: 0, y: 0 }, { x: 1000, y: 1000 }, "left")
    expect(areaOf(half)).toBe(500_000)
    expect(half[0]!.outline).toContainEqual({ x: 0, y: 1000 })
    expect(areaOf(halfPlane(box(0, 0, 1000, 1000), { x: 300, y: 0 }, { x: 300, y: 9 }, "right"))).toBe(
      700_000,
    )
  })

  it("agrees with another library on what 300 pairs of figures have in common, to 1 mm2 for each metre of edge", () => {
    const random = seeded(99)
    for (let count = 0; count < 300; count++) {
      const first = generatedRegion(random)
      const second = generatedRegion(random)
      const pairs = (region: Region) =>
        [region.outline, ...region.holes].map((ring) => ring.map(({ x, y }): [number, number] => [x, y]))
      const other = otherIntersection(pairs(first), pairs(second)).map(([outline, ...holes]): Region => {
        const ring = (points: [number, number][]) => points.map(([x, y]) => ({ x, y }))
        return { outline: ring(outline!), holes: holes.map(ring) }
      })
      const common = intersection([first], [second])
      const rounding = 1 + common.reduce((sum, region) => sum + regionPerimeter(region), 0) / 1000
      expect(Math.abs(areaOf(common) - areaOf(other))).toBeLessThanOrEqual(rounding)
      expect(
        Math.abs(areaOf(common) + areaOf(difference([first], [second])) - regionArea(first)),
      ).toBeLessThanOrEqual(rounding + regionPerimeter(first) / 1000)
    }
  })

  it("splits a figure by a line into two that sum to the whole", () => {
    const random = seeded(5)
    for (let count = 0; count < 300; count++) {
      const region = generatedRegion(random)
      const from = { x: whole(random, -3000, 3000), y: whole(random, -3000, 3000) }
      const to = { x: from.x + whole(random, 1, 5000), y: whole(random, -3000, 3000) }
      const sum = areaOf(halfPlane(region, from, to, "left")) + areaOf(halfPlane(region, from, to, "right"))
      expect(Math.abs(sum - regionArea(region))).toBeLessThanOrEqual(regionPerimeter(region) / 1000)
    }
  })
})
