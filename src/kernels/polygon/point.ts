import type { Degrees, Mm } from "../units.ts"

/** A point in the plane, mm: x to the right, y up. */
export interface Point {
  x: Mm
  y: Mm
}

/** Distance between two points, mm. */
export function distance(a: Point, b: Point): Mm {
  return Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2)
}

/** Shortest distance from a point to a straight piece between two ends, mm. */
export function distanceToSegment(point: Point, from: Point, to: Point): Mm {
  return distance(point, nearestOnSegment(point, from, to))
}

/** The point of a straight piece that lies nearest to a given point. */
export function nearestOnSegment(point: Point, from: Point, to: Point): Point {
  const run = { x: to.x - from.x, y: to.y - from.y }
  const squared = run.x ** 2 + run.y ** 2
  if (squared === 0) return from
  const along = ((point.x - from.x) * run.x + (point.y - from.y) * run.y) / squared
  return between(from, to, Math.min(1, Math.max(0, along)))
}

/** The point at a share (0 = from, 1 = to) of the way between two points. */
export function between(from: Point, to: Point, share: number): Point {
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }
}

/** Points moved by (dx, dy) mm. */
export function translated(points: readonly Point[], dx: Mm, dy: Mm): Point[] {
  return points.map((point) => ({ x: point.x + dx, y: point.y + dy }))
}

/** Points turned anticlockwise by an angle about a centre (the origin unless given). */
export function rotated(points: readonly Point[], angle: Degrees, about: Point = { x: 0, y: 0 }): Point[] {
  const { cos, sin } = cosSin(angle)
  return points.map((point) => {
    const dx = point.x - about.x
    const dy = point.y - about.y
    return { x: about.x + dx * cos - dy * sin, y: about.y + dx * sin + dy * cos }
  })
}

/** Points mirrored left for right (x changes its sign). The walk changes its sense: clockwise becomes anticlockwise. */
export function mirrored(points: readonly Point[]): Point[] {
  return points.map((point) => ({ x: -point.x, y: point.y }))
}

/** Cosine and sine of an angle in degrees, exact at whole quarter turns. */
export function cosSin(angle: Degrees): { cos: number; sin: number } {
  const quarter = (((angle / 90) % 4) + 4) % 4
  if (quarter === 0) return { cos: 1, sin: 0 }
  if (quarter === 1) return { cos: 0, sin: 1 }
  if (quarter === 2) return { cos: -1, sin: 0 }
  if (quarter === 3) return { cos: 0, sin: -1 }
  const radians = (angle * Math.PI) / 180
  return { cos: Math.cos(radians), sin: Math.sin(radians) }
}
