import { difference, intersection } from "../../../kernels/polygon/clip.ts"
import { boundsOf, regionArea } from "../../../kernels/polygon/measure.ts"
import type { Point } from "../../../kernels/polygon/point.ts"
import { type Region, regionOf } from "../../../kernels/polygon/region.ts"
import { sectionAt } from "../../../kernels/polygon/strips.ts"
import type { Mm } from "../../../kernels/units.ts"

/** What is cut out of one piece besides its ends and its rip, mm: from its left end, and from the row's first edge. */
export interface Notch {
  from: Mm
  to: Mm
  /** Away from the first row's wall: 0 is the row's edge nearer to it. */
  low: Mm
  high: Mm
}

/** What is cut out is told from this size up; less is fitting, mm. */
const leastNotch: Mm = 2
/** Widths are read this far inside a piece's ends, mm. */
const inside: Mm = 1

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

/** Width of a piece just inside its left and right end, mm. */
export function endWidths(parts: readonly Region[]): { left: Mm; right: Mm } {
  const box = boundsOf(parts.flatMap((part) => part.outline))
  const reach = Math.min(inside, (box.right - box.left) / 2)
  return { left: widthAt(parts, box.left + reach), right: widthAt(parts, box.right - reach) }
}

/**
 * How far the end of a run leans out of square: furthest along at the row's far edge less at its near edge, mm.
 * Positive: the far edge (away from the first row's wall) reaches further to the right.
 */
export function endLean(run: Region, end: "left" | "right"): Mm {
  const box = boundsOf(run.outline)
  const reach = Math.min(inside, (box.top - box.bottom) / 2)
  const near = endAt(run, box.bottom + reach, end)
  const far = endAt(run, box.top - reach, end)
  return near === undefined || far === undefined ? 0 : far - near
}

/** What is cut out of a piece, apart from its rip along an edge and its leaning ends. */
export function notchesOf(parts: readonly Region[], row: { bottom: Mm; top: Mm }): Notch[] {
  const box = boundsOf(parts.flatMap((part) => part.outline))
  if (parts.length === 1 && parts.every(isUprightBox)) return []
  const whole = regionOf(boxOf(box.left, box.right, row.bottom, row.top))
  return difference([whole], parts).flatMap((cut): Notch[] => {
    const out = boundsOf(cut.outline)
    const along = out.right - out.left
    const across = out.top - out.bottom
    if (along < leastNotch || across < leastNotch) return []
    if (along >= box.right - box.left - leastNotch && sloped(cut)) return []
    if (across >= row.top - row.bottom - leastNotch && isTriangle(cut)) return []
    return [
      {
        from: out.left - box.left,
        to: out.right - box.left,
        low: out.bottom - row.bottom,
        high: out.top - row.bottom,
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

function endAt(run: Region, y: Mm, end: "left" | "right"): Mm | undefined {
  const stretches = sectionAt(run, y)
  return end === "left" ? stretches.at(0)?.from : stretches.at(-1)?.to
}

/** A rip, straight or tapered, has three or four corners. */
function sloped(cut: Region): boolean {
  return cut.outline.length <= 4
}

function isTriangle(cut: Region): boolean {
  return cut.outline.length === 3
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
