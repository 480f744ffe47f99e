import {
  Clipper,
  ClipType,
  EndType,
  FillRule,
  JoinType,
  type Path64,
  type Paths64,
  type PolyPath64,
  PolyTree64,
} from "clipper2-ts"
import type { Mm } from "../units.ts"
import { anticlockwise, clockwise } from "./angles.ts"
import { boundsOf } from "./measure.ts"
import { distance, type Point } from "./point.ts"
import { edgesOf, type Region, type Ring, regionOf } from "./region.ts"

/** Clipping works in whole thousandths of a millimetre. */
const unitsPerMm = 1000
/** A mitred corner reaches at most this many times the offset; sharper corners are squared off. */
const longestMitre = 20

/** What two sets of figures have in common, as separate figures with their holes; corners to 1/1000 mm. */
export function intersection(subjects: readonly Region[], clips: readonly Region[]): Region[] {
  return combined(ClipType.Intersection, subjects, clips)
}

/** The figures joined: overlapping or touching ones become one. */
export function union(figures: readonly Region[]): Region[] {
  return combined(ClipType.Union, figures, [])
}

/** The first figures less the second. */
export function difference(subjects: readonly Region[], clips: readonly Region[]): Region[] {
  return combined(ClipType.Difference, subjects, clips)
}

/**
 * A figure grown (positive) or shrunk (negative) by a distance all round, holes the other way, corners kept sharp.
 * A figure may fall into several, or vanish (empty list). Corners to 1/1000 mm.
 */
export function offset(region: Region, by: Mm): Region[] {
  const paths = toPaths([region])
  const grown = Clipper.inflatePaths(paths, by * unitsPerMm, JoinType.Miter, EndType.Polygon, longestMitre)
  const tree = new PolyTree64()
  Clipper.booleanOpWithPolyTree(ClipType.Union, grown, null, tree, FillRule.NonZero)
  return regionsOf(tree)
}

/** A figure shrunk by a distance all round (an expansion gap, a fitting gap). See `offset`. */
export function inset(region: Region, by: Mm): Region[] {
  return offset(region, -by)
}

/** What of a figure lies to one side of the line through two points, as seen walking from the first to the second. */
export function halfPlane(region: Region, from: Point, to: Point, keep: "left" | "right"): Region[] {
  const length = distance(from, to)
  const box = boundsOf([...region.outline, from, to])
  const reach = 2 * (box.right - box.left + box.top - box.bottom) + 1
  const along = { x: ((to.x - from.x) / length) * reach, y: ((to.y - from.y) / length) * reach }
  const across = keep === "left" ? { x: -along.y, y: along.x } : { x: along.y, y: -along.x }
  const back = { x: from.x - along.x, y: from.y - along.y }
  const ahead = { x: from.x + along.x, y: from.y + along.y }
  const half = [
    back,
    ahead,
    { x: ahead.x + across.x, y: ahead.y + across.y },
    { x: back.x + across.x, y: back.y + across.y },
  ]
  return intersection([region], [regionOf(half)])
}

function combined(type: ClipType, subjects: readonly Region[], clips: readonly Region[]): Region[] {
  const tree = new PolyTree64()
  Clipper.booleanOpWithPolyTree(type, toPaths(subjects), toPaths(clips), tree, FillRule.NonZero)
  return regionsOf(tree)
}

function toPaths(regions: readonly Region[]): Paths64 {
  return regions.flatMap((region) => [
    toPath(anticlockwise(region.outline)),
    ...region.holes.map((hole) => toPath(clockwise(hole))),
  ])
}

function toPath(ring: Ring): Path64 {
  return ring.map(({ x, y }) => ({ x: Math.round(x * unitsPerMm), y: Math.round(y * unitsPerMm) }))
}

function regionsOf(node: PolyPath64): Region[] {
  const regions: Region[] = []
  for (let index = 0; index < node.count; index++) {
    const outer = node.child(index)
    const holes: Point[][] = []
    for (let inner = 0; inner < outer.count; inner++) {
      const hole = outer.child(inner)
      if (hole.poly) holes.push(toRing(hole.poly))
      regions.push(...regionsOf(hole))
    }
    if (outer.poly) regions.push({ outline: toRing(outer.poly), holes })
  }
  return regions.filter((region) => edgesOf(region.outline).length > 2)
}

function toRing(path: Path64): Point[] {
  return path.map(({ x, y }) => ({ x: x / unitsPerMm, y: y / unitsPerMm }))
}
