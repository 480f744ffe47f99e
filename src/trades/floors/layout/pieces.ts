import { anticlockwise } from "../../../kernels/polygon/angles.ts"
import { difference, intersection } from "../../../kernels/polygon/clip.ts"
import { boundsOf, regionArea } from "../../../kernels/polygon/measure.ts"
import type { Point } from "../../../kernels/polygon/point.ts"
import { edgesOf, type Region, regionOf } from "../../../kernels/polygon/region.ts"
import { sectionAt } from "../../../kernels/polygon/strips.ts"
import type { Mm } from "../../../kernels/units.ts"

/** What is cut out of one piece besides its ends and its rip, mm: from its left end, and from the ripped piece's near edge. */
export interface Notch {
  from: Mm
  to: Mm
  /** Away from the first row's wall: 0 is the piece's edge nearer to it. */
  low: Mm
  high: Mm
}

/** What is cut out is told from this size up; less is fitting, mm. */
const leastNotch: Mm = 2
/** Widths are read this far inside a piece's ends, mm. */
const inside: Mm = 1
/** Rip widths are read over this much of each end, at so many places. */
const readWithin: Mm = 400
const readings = 10
/** An end leans if it rises at least this much for each mm along; flatter is a notch. */
const steepEnd = 0.7

/** What of a run lies between two crosswise lines: the true shape of a piece, in one or more parts. */
export function partBetween(run: Region, left: Mm, right: Mm): Region[] {
  const box = boundsOf(run.outline)
  if (left <= box.left && right >= box.right) return [run]
  if (isUprightBox(run)) {
    return [regionOf(boxOf(Math.max(left, box.left), Math.min(right, box.right), box.bottom, box.top))]
  }
  return intersection([run], [regionOf(boxOf(left, right, box.bottom - 1, box.top + 1))])
}

/** How wide a figure is across the rows at a place along them, mm: parts of it added up. */
export function widthAt(parts: readonly Region[], x: Mm): Mm {
  return parts.flatMap((part) => sectionAt(turned(part), x)).reduce((sum, { from, to }) => sum + to - from, 0)
}

/**
 * Widths that a run is ripped to at its left and right end, mm. Read a little way in, where notches and leaning ends leave the full
 * rip, and carried on in a straight line to the ends.
 */
export function ripWidths(parts: readonly Region[], boardWidth: Mm): { left: Mm; right: Mm } {
  const box = boundsOf(parts.flatMap((part) => part.outline))
  const length = box.right - box.left
  const reach = Math.min(readWithin, length / 2)
  const widest = (from: Mm, way: 1 | -1) => {
    let best = { x: from, width: 0 }
    for (let step = 0; step <= readings; step++) {
      const x = from + way * (inside + ((reach - inside) * step) / readings)
      const width = widthAt(parts, x)
      if (width > best.width + inside / readings) best = { x, width }
    }
    return best
  }
  const left = widest(box.left, 1)
  const right = widest(box.right, -1)
  const slope = right.x - left.x > reach ? (right.width - left.width) / (right.x - left.x) : 0
  const within = (width: Mm) => Math.max(0, Math.min(boardWidth, width))
  return {
    left: within(left.width - slope * (left.x - box.left)),
    right: within(right.width + slope * (box.right - right.x)),
  }
}

/**
 * How far the end of a run leans out of square: furthest along at the row's far edge less at its near edge, mm.
 * Positive: the far edge (away from the first row's wall) reaches further to the right.
 */
export function endLean(run: Region, end: "left" | "right"): Mm {
  let lean = 0
  const outer = hull(run.outline)
  const isOuter = (point: Point) => outer.some((other) => other.x === point.x && other.y === point.y)
  for (const { from, to } of edgesOf(anticlockwise(run.outline))) {
    if (!isOuter(from) || !isOuter(to)) continue
    const rise = to.y - from.y
    if (Math.abs(rise) < steepEnd * Math.abs(to.x - from.x)) continue
    if (rise > 0 === (end === "right")) lean += (to.x - from.x) * Math.sign(rise)
  }
  return lean
}

/** What is cut out of a piece, apart from its rip along an edge and its leaning ends: where its outline turns inward, and holes. */
export function notchesOf(parts: readonly Region[]): Notch[] {
  const { left, bottom } = boundsOf(parts.flatMap((part) => part.outline))
  if (parts.length === 1 && parts.every((part) => part.outline.length < 5 && part.holes.length === 0))
    return []
  const round = regionOf(hull(parts.flatMap((part) => part.outline)))
  return difference([round], parts).flatMap((cut): Notch[] => {
    const out = boundsOf(cut.outline)
    if (out.right - out.left < leastNotch || out.top - out.bottom < leastNotch) return []
    return [
      {
        from: out.left - left,
        to: out.right - left,
        low: out.bottom - bottom,
        high: out.top - bottom,
      },
    ]
  })
}

/** True for a rectangle that stands square in the frame. */
export function isUprightBox(region: Region): boolean {
  if (region.holes.length > 0 || region.outline.length !== 4) return false
  const box = boundsOf(region.outline)
  return Math.abs(regionArea(region) - (box.right - box.left) * (box.top - box.bottom)) < 1
}

/** The least outline without inward corners round points, anticlockwise (monotone chains). */
function hull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y)
  const chain = (way: readonly Point[]) => {
    const kept: Point[] = []
    for (const point of way) {
      while (kept.length > 1 && turn(kept.at(-2)!, kept.at(-1)!, point) <= 0) kept.pop()
      kept.push(point)
    }
    return kept.slice(0, -1)
  }
  return [...chain(sorted), ...chain([...sorted].reverse())]
}

function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}

function turned(region: Region): Region {
  const ring = (points: readonly Point[]) => points.map(({ x, y }) => ({ x: y, y: x }))
  return { outline: ring(region.outline), holes: region.holes.map(ring) }
}

function boxOf(left: Mm, right: Mm, bottom: Mm, top: Mm): Point[] {
  return [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ]
}
