import type { Mm } from "../units.ts"
import { distanceToSegment, type Point } from "./point.ts"
import { edgesOf, type Region, type Ring } from "./region.ts"

/** A point nearer to an edge than this lies on it, mm. */
const onEdge: Mm = 1e-6

/** Where a point lies of an outline: inside, outside, or on its edge. */
export function sideOf(ring: Ring, point: Point): "inside" | "outside" | "edge" {
  let inside = false
  for (const { from, to } of edgesOf(ring)) {
    if (distanceToSegment(point, from, to) <= onEdge) return "edge"
    if (from.y > point.y !== to.y > point.y) {
      const x = from.x + ((point.y - from.y) / (to.y - from.y)) * (to.x - from.x)
      if (x > point.x) inside = !inside
    }
  }
  return inside ? "inside" : "outside"
}

/** True if a point lies in a figure and not in a hole; the edges of outline and holes belong to the figure. */
export function contains(region: Region, point: Point): boolean {
  if (sideOf(region.outline, point) === "outside") return false
  return region.holes.every((hole) => sideOf(hole, point) !== "inside")
}

/** True if an outline has at least three corners, no edge without length, and nowhere touches or crosses itself. */
export function isSimple(ring: Ring): boolean {
  if (ring.length < 3) return false
  const edges = edgesOf(ring)
  return edges.every((edge, i) => {
    if (edge.from.x === edge.to.x && edge.from.y === edge.to.y) return false
    return edges.slice(i + 1).every((other, k) => {
      const j = i + 1 + k
      if (j === i + 1) return !foldsBack(edge.from, edge.to, other.to)
      if (i === 0 && j === edges.length - 1) return !foldsBack(other.from, edge.from, edge.to)
      return !meet(edge.from, edge.to, other.from, other.to)
    })
  })
}

function foldsBack(before: Point, corner: Point, after: Point): boolean {
  const straight = side(before, corner, after) === 0
  const forward =
    (corner.x - before.x) * (after.x - corner.x) + (corner.y - before.y) * (after.y - corner.y) > 0
  return straight && !forward
}

function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  const abc = side(a, b, c)
  const abd = side(a, b, d)
  const cda = side(c, d, a)
  const cdb = side(c, d, b)
  if (abc !== abd && cda !== cdb && abc * abd <= 0 && cda * cdb <= 0) return true
  return [
    [abc, a, b, c],
    [abd, a, b, d],
    [cda, c, d, a],
    [cdb, c, d, b],
  ].some(([sign, from, to, point]) => sign === 0 && within(from as Point, to as Point, point as Point))
}

function side(from: Point, to: Point, point: Point): number {
  return Math.sign((to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x))
}

function within(from: Point, to: Point, point: Point): boolean {
  return (
    Math.min(from.x, to.x) <= point.x &&
    point.x <= Math.max(from.x, to.x) &&
    Math.min(from.y, to.y) <= point.y &&
    point.y <= Math.max(from.y, to.y)
  )
}
