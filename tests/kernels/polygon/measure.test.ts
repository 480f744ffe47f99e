import { union as otherUnion } from "polyclip-ts"
import { describe, expect, it } from "vitest"
import {
  area,
  boundsOf,
  centroid,
  regionArea,
  regionCentroid,
  regionPerimeter,
  signedArea,
} from "../../../src/kernels/polygon/measure.ts"
import { mirrored, type Point, rotated, translated } from "../../../src/kernels/polygon/point.ts"
import type { Region } from "../../../src/kernels/polygon/region.ts"
import { roundHalfUp } from "../../../src/kernels/units.ts"
import { areaByCoordinates } from "../../facts/geometry.ts"
import { generatedRegion, seeded, whole } from "./outlines.ts"

/** Outlines measured; `GENERATED=10000` measures as many as that. */
const figures = Number(process.env.GENERATED ?? 3_000)

describe("area by coordinates", () => {
  it.each(areaByCoordinates)("$what: $source", ({ value }) => {
    const ring = value.corners.map(([x, y]) => ({ x, y }))
    expect(Number(area(ring).toPrecision(5))).toBe(value.area)
  })

  it("is positive anticlockwise, negative clockwise, and loses no digits far from the origin", () => {
    const square = [0, 1, 2, 3].map((i) => ({ x: i === 1 || i === 2 ? 1000 : 0, y: i > 1 ? 1000 : 0 }))
    expect(signedArea(square)).toBe(1_000_000)
    expect(signedArea([...square].reverse())).toBe(-1_000_000)
    expect(signedArea(translated(square, 4e9, -7e9))).toBe(1_000_000)
    expect(centroid(translated(square, 4e9, 0))).toEqual({ x: 4e9 + 500, y: 500 })
    expect(boundsOf(square)).toEqual({ left: 0, bottom: 0, right: 1000, top: 1000 })
  })
})

describe(`${figures} generated figures`, () => {
  it("agree with another polygon library, its result measured by sweeping levels, to 1 mm2, 0.001 mm of length and centre", () => {
    const random = seeded(20_270_301)
    for (let count = 0; count < figures; count++) {
      const region = generatedRegion(random)
      const other = sweep(libraryRings(region))
      expect(Math.abs(regionArea(region) - other.area)).toBeLessThanOrEqual(1)
      expect(Math.abs(regionPerimeter(region) - other.perimeter)).toBeLessThanOrEqual(0.001)
      const centre = regionCentroid(region)
      expect(Math.abs(centre.x - other.centre.x)).toBeLessThanOrEqual(0.001)
      expect(Math.abs(centre.y - other.centre.y)).toBeLessThanOrEqual(0.001)
    }
  })

  it("keep area and perimeter when turned, mirrored, or walked from another corner; the centre goes along", () => {
    const random = seeded(42)
    for (let count = 0; count < figures; count++) {
      const region = generatedRegion(random)
      const angle = random() * 360
      const start = whole(random, 0, region.outline.length - 1)
      const variants: [(points: readonly Point[]) => Point[], (centre: Point) => Point][] = [
        [(points) => rotated(points, angle), (centre) => rotated([centre], angle)[0]!],
        [(points) => mirrored(points), (centre) => mirrored([centre])[0]!],
        [(points) => [...points.slice(start), ...points.slice(0, start)], (centre) => centre],
      ]
      for (const [change, moved] of variants) {
        const changed = { outline: change(region.outline), holes: region.holes.map((hole) => change(hole)) }
        expect(Math.abs(regionArea(changed) - regionArea(region))).toBeLessThanOrEqual(1)
        expect(roundHalfUp(regionPerimeter(changed) - regionPerimeter(region), 6)).toBe(0)
        const expected = moved(regionCentroid(region))
        const centre = regionCentroid(changed)
        expect(Math.hypot(centre.x - expected.x, centre.y - expected.y)).toBeLessThan(1e-5)
      }
    }
  })
})

type Pair = [number, number]

function libraryRings(region: Region): Pair[][] {
  const pairs = [region.outline, ...region.holes].map((ring) => ring.map(({ x, y }): Pair => [x, y]))
  return otherUnion(pairs).flat() as Pair[][]
}

/** Measures rings without the area-by-coordinates formula: between two corner levels each section is a trapezium. */
function sweep(rings: Pair[][]) {
  const edges = rings.flatMap((ring) => ring.slice(1).map((to, index): [Pair, Pair] => [ring[index]!, to]))
  const perimeter = edges.reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0)
  const levels = [...new Set(rings.flat().map(([, y]) => y))].sort((a, b) => a - b)
  let whole = 0
  let momentX = 0
  let momentY = 0
  for (let index = 0; index + 1 < levels.length; index++) {
    const [low, high] = [levels[index]!, levels[index + 1]!]
    const sections = [low, (low + high) / 2, high].map((y) => stretches(edges, (low + high) / 2, y))
    const height = high - low
    const simpson = (of: (level: number) => number) => (height / 6) * (of(0) + 4 * of(1) + of(2))
    const width = (level: number) => sections[level]!.reduce((sum, [a, b]) => sum + b - a, 0)
    whole += simpson(width)
    momentX += simpson((level) => sections[level]!.reduce((sum, [a, b]) => sum + (b * b - a * a) / 2, 0))
    momentY += simpson((level) => width(level) * (low + (height * level) / 2))
  }
  return { area: whole, perimeter, centre: { x: momentX / whole, y: momentY / whole } }
}

/** The edges that pass a middle level, taken at another level of the same band, paired from left to right. */
function stretches(edges: [Pair, Pair][], middle: number, y: number): Pair[] {
  const at = (edge: [Pair, Pair], level: number) =>
    edge[0][0] + ((level - edge[0][1]) / (edge[1][1] - edge[0][1])) * (edge[1][0] - edge[0][0])
  const passing = edges
    .filter(([a, b]) => Math.min(a[1], b[1]) < middle && middle < Math.max(a[1], b[1]))
    .sort((a, b) => at(a, middle) - at(b, middle))
  const pairs: Pair[] = []
  for (let index = 0; index + 1 < passing.length; index += 2) {
    pairs.push([at(passing[index]!, y), at(passing[index + 1]!, y)])
  }
  return pairs
}
