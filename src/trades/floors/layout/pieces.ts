import { anticlockwise } from "../../../kernels/polygon/angles.ts"
import { difference, intersection } from "../../../kernels/polygon/clip.ts"
import { boundsOf, regionArea } from "../../../kernels/polygon/measure.ts"
import { distanceToSegment, type Point } from "../../../kernels/polygon/point.ts"
import { edgesOf, type Region, regionOf } from "../../../kernels/polygon/region.ts"
import { sectionAt } from "../../../kernels/polygon/strips.ts"
import type { Mm } from "../../../kernels/units.ts"

/** What is cut out of one piece besides its ends and its rip, mm: from its left end, and from the ripped piece's near edge. */
export interface Notch {
  from: Mm
  to: Mm
  /** The edge it is cut into (`near`: towards the first row's wall), or none of them. */
  edge: "near" | "far" | "inside"
  /** Depth from that edge at its left and right end; of one inside, where it begins and ends across the piece. */
  depth: { left: Mm; right: Mm }
}

/** What is cut out is told from this size up; less is fitting, mm. */
const leastNotch: Mm = 2
/** Widths are read this far inside a piece's ends, mm. */
const inside: Mm = 1
/** Rip widths are read over this much of each end, at so many places. */
const readWithin: Mm = 400
const readings = 10
/** Depths of a cut-out are read this far inside its ends, mm. */
const hair: Mm = 0.01
/** Corners that stand out of a straight line by less are none, mm. */
const straightWithin: Mm = 0.5
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
  const ring = withoutIdleCorners(anticlockwise(run.outline))
  const outer = hull(ring)
  const isOuter = (point: Point) => outer.some((other) => other.x === point.x && other.y === point.y)
  for (const { from, to } of edgesOf(ring)) {
    if (!isOuter(from) || !isOuter(to)) continue
    const rise = to.y - from.y
    if (Math.abs(rise) < steepEnd * Math.abs(to.x - from.x)) continue
    if (rise > 0 === (end === "right")) lean += (to.x - from.x) * Math.sign(rise)
  }
  return lean
}

/**
 * What is cut out of a piece, apart from its rip along an edge and its leaning ends: where its outline turns inward, and holes.
 * A stepped cut-out is told step by step, left to right.
 */
export function notchesOf(parts: readonly Region[]): Notch[] {
  if (parts.length === 1 && parts.every((part) => part.outline.length < 5 && part.holes.length === 0))
    return []
  const round = regionOf(hull(parts.flatMap((part) => part.outline)))
  return difference([round], parts).flatMap((pocket) => {
    const out = boundsOf(pocket.outline)
    if (out.right - out.left < leastNotch || out.top - out.bottom < leastNotch) return []
    return merged(stepsOf(pocket, parts))
  })
}

/** A pocket between the lines on which its corners stand. */
function stepsOf(pocket: Region, parts: readonly Region[]): Notch[] {
  const { left, bottom, top } = boundsOf(parts.flatMap((part) => part.outline))
  const lines = [...new Set(pocket.outline.map((point) => point.x))].sort((a, b) => a - b)
  return lines.slice(1).flatMap((to, index): Notch[] => {
    const from = lines[index]!
    const cut = reachAt([pocket], (from + to) / 2)
    const wood = reachAt(parts, (from + to) / 2)
    if (to - from < leastNotch || !cut || !wood || cut.to - cut.from < inside) return []
    const step = { from: from - left, to: to - left }
    const ends = [from + hair, to - hair].map((x) => reachAt(parts, x) ?? wood)
    const [first, last] = [ends[0]!, ends[1]!]
    if (cut.to <= wood.from + inside) {
      return [{ ...step, edge: "near", depth: { left: first.from - bottom, right: last.from - bottom } }]
    }
    if (cut.from >= wood.to - inside) {
      return [{ ...step, edge: "far", depth: { left: top - first.to, right: top - last.to } }]
    }
    return [{ ...step, edge: "inside", depth: { left: cut.from - bottom, right: cut.to - bottom } }]
  })
}

/** Neighbouring steps that go on at one depth as one; steps too shallow to cut left out. */
function merged(steps: readonly Notch[]): Notch[] {
  const found: Notch[] = []
  for (const step of steps) {
    const last = found.at(-1)
    const goesOn =
      last?.edge === step.edge &&
      Math.abs(last.depth.right - step.depth.left) < leastNotch &&
      step.from - last.to < leastNotch
    if (goesOn) Object.assign(last, { to: step.to, depth: { ...last.depth, right: step.depth.right } })
    else found.push({ ...step })
  }
  return found.filter((step) => Math.max(step.depth.left, step.depth.right) >= leastNotch)
}

function reachAt(parts: readonly Region[], x: Mm): { from: Mm; to: Mm } | null {
  const stretches = parts.flatMap((part) => sectionAt(turned(part), x))
  if (stretches.length === 0) return null
  return {
    from: Math.min(...stretches.map(({ from }) => from)),
    to: Math.max(...stretches.map(({ to }) => to)),
  }
}

/** True for a rectangle that stands square in the frame. */
export function isUprightBox(region: Region): boolean {
  if (region.holes.length > 0 || region.outline.length !== 4) return false
  const box = boundsOf(region.outline)
  return Math.abs(regionArea(region) - (box.right - box.left) * (box.top - box.bottom)) < 1
}

/** An outline without the corners that do not turn. */
function withoutIdleCorners(ring: readonly Point[]): Point[] {
  const kept: Point[] = []
  ring.forEach((point, index) => {
    const before = kept.at(-1) ?? ring.at(-1)!
    const after = ring[(index + 1) % ring.length]!
    if (distanceToSegment(point, before, after) >= straightWithin) kept.push(point)
  })
  return kept
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
