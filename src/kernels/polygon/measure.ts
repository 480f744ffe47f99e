import type { Mm } from "../units.ts"
import { distance, type Point } from "./point.ts"
import { edgesOf, type Region, type Ring } from "./region.ts"

/** An upright box around points, mm. */
export interface Bounds {
  left: Mm
  bottom: Mm
  right: Mm
  top: Mm
}

/**
 * Area by coordinates, mm2: positive for an outline walked anticlockwise (y up), negative for clockwise.
 * Coordinates are taken from the first corner, so that a far origin costs no digits.
 */
export function signedArea(ring: Ring): number {
  const origin = ring[0]
  if (!origin) return 0
  let doubled = 0
  for (const { from, to } of edgesOf(ring)) doubled += cross(from, to, origin)
  return doubled / 2
}

/** Area of an outline, mm2, never negative. */
export function area(ring: Ring): number {
  return Math.abs(signedArea(ring))
}

/** Length round an outline, mm. */
export function perimeter(ring: Ring): Mm {
  return edgesOf(ring).reduce((sum, { from, to }) => sum + distance(from, to), 0)
}

/** Centre of area of an outline; of an outline without area, the mean of its corners. */
export function centroid(ring: Ring): Point {
  const origin = ring[0] ?? { x: 0, y: 0 }
  let doubled = 0
  let x = 0
  let y = 0
  for (const { from, to } of edgesOf(ring)) {
    const weight = cross(from, to, origin)
    doubled += weight
    x += weight * (from.x + to.x - 2 * origin.x)
    y += weight * (from.y + to.y - 2 * origin.y)
  }
  if (doubled === 0) return meanOf(ring)
  return { x: origin.x + x / (3 * doubled), y: origin.y + y / (3 * doubled) }
}

/** Area of a figure less its holes, mm2. */
export function regionArea(region: Region): number {
  return area(region.outline) - region.holes.reduce((sum, hole) => sum + area(hole), 0)
}

/** Length round a figure and round its holes, mm. */
export function regionPerimeter(region: Region): Mm {
  return perimeter(region.outline) + region.holes.reduce((sum, hole) => sum + perimeter(hole), 0)
}

/** Centre of area of a figure less its holes. */
export function regionCentroid(region: Region): Point {
  const parts = [region.outline, ...region.holes].map((ring, index) => ({
    weight: index === 0 ? area(ring) : -area(ring),
    at: centroid(ring),
  }))
  const whole = parts.reduce((sum, part) => sum + part.weight, 0)
  if (whole === 0) return centroid(region.outline)
  return {
    x: parts.reduce((sum, part) => sum + part.weight * part.at.x, 0) / whole,
    y: parts.reduce((sum, part) => sum + part.weight * part.at.y, 0) / whole,
  }
}

/** The upright box around points; of no points, a box without size at the origin. */
export function boundsOf(points: readonly Point[]): Bounds {
  const first = points[0] ?? { x: 0, y: 0 }
  const box = { left: first.x, bottom: first.y, right: first.x, top: first.y }
  for (const { x, y } of points) {
    box.left = Math.min(box.left, x)
    box.bottom = Math.min(box.bottom, y)
    box.right = Math.max(box.right, x)
    box.top = Math.max(box.top, y)
  }
  return box
}

function cross(from: Point, to: Point, origin: Point): number {
  return (from.x - origin.x) * (to.y - origin.y) - (to.x - origin.x) * (from.y - origin.y)
}

function meanOf(points: readonly Point[]): Point {
  const count = Math.max(1, points.length)
  return {
    x: points.reduce((sum, point) => sum + point.x, 0) / count,
    y: points.reduce((sum, point) => sum + point.y, 0) / count,
  }
}
