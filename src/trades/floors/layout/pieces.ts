import { anticlockwise } from "../../../kernels/polygon/angles.ts"
import { difference, intersection } from "../../../kernels/polygon/clip.ts"
import { boundsOf, regionArea } from "../../../kernels/polygon/measure.ts"
import { distanceToSegment, type Point } from "../../../kernels/polygon/point.ts"
import { edgesOf, type Region, regionOf } from "../../../kernels/polygon/region.ts"
import { sectionAt } from "../../../kernels/polygon/strips.ts"
import type { Mm } from "../../../kernels/units.ts"
import { heightAt, lengthwise, type Rip } from "./rips.ts"

/** What is cut out of one piece besides its ends and its rip, mm: from its left end, and from its ripped edges. */
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
/** A cut-out reaches an edge if it comes this near, mm. */
const inside: Mm = 1
/** Depths of a cut-out are read this far inside its ends, mm. */
const hair: Mm = 0.01
/** Corners that stand out of a straight line by less are none, mm. */
const straightWithin: Mm = 0.5

/** What of a run lies between two crosswise lines: the true shape of a piece, in one or more parts. */
export function partBetween(run: Region, left: Mm, right: Mm): Region[] {
  const box = boundsOf(run.outline)
  if (left <= box.left && right >= box.right) return [run]
  if (isUprightBox(run)) {
    return [regionOf(boxOf(Math.max(left, box.left), Math.min(right, box.right), box.bottom, box.top))]
  }
  return intersection([run], [regionOf(boxOf(left, right, box.bottom - 1, box.top + 1))])
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
    if (Math.abs(rise) < lengthwise * Math.abs(to.x - from.x)) continue
    if (rise > 0 === (end === "right")) lean += (to.x - from.x) * Math.sign(rise)
  }
  return lean
}

/**
 * What is cut out of a piece, apart from its rip and its leaning ends. A stepped cut-out is told step by step, left to right.
 * @param rip the straight edges the piece is ripped to; depths are measured from them
 */
export function notchesOf(parts: readonly Region[], rip: Rip): Notch[] {
  const { left, right } = boundsOf(parts.flatMap((part) => part.outline))
  const ripped = regionOf([
    { x: left, y: heightAt(rip.near, left) },
    { x: right, y: heightAt(rip.near, right) },
    { x: right, y: heightAt(rip.far, right) },
    { x: left, y: heightAt(rip.far, left) },
  ])
  const whole = regionArea(ripped)
  if (whole - parts.reduce((sum, part) => sum + regionArea(part), 0) < leastNotch) return []
  return difference([ripped], parts).flatMap((pocket) => {
    const out = boundsOf(pocket.outline)
    if (out.right - out.left < leastNotch || out.top - out.bottom < leastNotch) return []
    return merged(stepsOf(pocket, parts, rip)).filter((step) => !isLean(step, right - left))
  })
}

/** True for what a leaning end leaves out: told with the ends, not with the notches. */
function isLean({ from, to, depth }: Notch, length: Mm): boolean {
  const atEnd = from < leastNotch || to > length - leastNotch
  return atEnd && Math.abs(depth.left - depth.right) >= lengthwise * (to - from)
}

/** A pocket between the lines on which its corners stand. */
function stepsOf(pocket: Region, parts: readonly Region[], rip: Rip): Notch[] {
  const { left } = boundsOf(parts.flatMap((part) => part.outline))
  const corners = [pocket, ...parts].flatMap((figure) => [figure.outline, ...figure.holes].flat())
  const reach = boundsOf(pocket.outline)
  const lines = [...new Set(corners.map((point) => point.x))]
    .filter((x) => x >= reach.left && x <= reach.right)
    .sort((a, b) => a - b)
  return lines.slice(1).flatMap((to, index): Notch[] => {
    const from = lines[index]!
    const cut = reachAt([pocket], (from + to) / 2)
    const wood = reachAt(parts, (from + to) / 2)
    if (to - from < leastNotch || !cut || !wood || cut.to - cut.from < inside) return []
    const step = { from: from - left, to: to - left }
    const [first, last] = [from + hair, to - hair].map((x) => ({
      cut: reachAt([pocket], x) ?? cut,
      near: heightAt(rip.near, x),
      far: heightAt(rip.far, x),
    })) as [Reading, Reading]
    if (cut.to <= wood.from + inside)
      return [
        { ...step, edge: "near", depth: { left: first.cut.to - first.near, right: last.cut.to - last.near } },
      ]
    if (cut.from >= wood.to - inside)
      return [
        {
          ...step,
          edge: "far",
          depth: { left: first.far - first.cut.from, right: last.far - last.cut.from },
        },
      ]
    return [{ ...step, edge: "inside", depth: { left: cut.from - first.near, right: cut.to - first.near } }]
  })
}

/** A cut-out and the ripped edges at one place along a piece. */
interface Reading {
  cut: { from: Mm; to: Mm }
  near: Mm
  far: Mm
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
