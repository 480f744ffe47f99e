import { cosSin, type Point } from "../polygon/point.ts"
import type { Mm } from "../units.ts"
import { boxCorners, type Label, type LabelBox, labelBox } from "./marks.ts"

/** A label where it was put, and how far it had to move. */
export interface PlacedLabel extends Label {
  box: LabelBox
  moved: Mm
}

/** A straight stroke on paper that labels would rather not lie over. */
export interface Obstacle {
  from: Point
  to: Point
}

/** Free space kept between two labels, mm on paper. */
const clearance: Mm = 0.4
/** A free place is sought in rings round the wished one: so far apart, in so many directions; strokes are minded as far as the limit. */
const ringStep: Mm = 1.5
const directions = 16
const strokesMindedWithin: Mm = 15

/**
 * Labels put so that none lies over another. Fixed ones stay; then figures of dimensions take their places along their own line;
 * the rest take the nearest free place round about; within reach they also keep clear of strokes.
 * @param labels  wished places on paper, mm, y up
 * @param strokes lines on paper that labels keep clear of where they can
 * @returns the labels in the order given
 */
export function placeLabels(labels: readonly Label[], strokes: readonly Obstacle[] = []): PlacedLabel[] {
  const placed = new Map<Label, PlacedLabel>()
  const taken: LabelBox[] = []
  const lines = strokes.map(lineBox)
  const inTurn = [...labels].sort((a, b) => rank(a) - rank(b))
  for (const label of inTurn) {
    const at = label.fixed ? label.at : freePlace(label, taken, lines)
    const box = { ...labelBox(label), centre: at }
    const moved = Math.hypot(at.x - label.at.x, at.y - label.at.y)
    taken.push(box)
    placed.set(label, { ...label, at, box, moved })
  }
  return labels.map((label) => placed.get(label)!)
}

/** True if two boxes, each turned as it may be, share any area (touching edges do not count). */
export function boxesOverlap(a: LabelBox, b: LabelBox): boolean {
  if (areFarApart(a, b)) return false
  const first = boxCorners(a)
  const second = boxCorners(b)
  return [a.angle, a.angle + 90, b.angle, b.angle + 90].every((angle) => {
    const { cos, sin } = cosSin(angle)
    const [fromA, toA] = spread(first, cos, sin)
    const [fromB, toB] = spread(second, cos, sin)
    return toA > fromB + touching && toB > fromA + touching
  })
}

/** A quick look that spares most comparisons: the circles round two boxes do not meet. */
function areFarApart(a: LabelBox, b: LabelBox): boolean {
  const reach = (Math.sqrt(a.width ** 2 + a.height ** 2) + Math.sqrt(b.width ** 2 + b.height ** 2)) / 2
  return (a.centre.x - b.centre.x) ** 2 + (a.centre.y - b.centre.y) ** 2 > reach ** 2
}

function rank(label: Label): number {
  if (label.fixed) return 0
  return label.shifts.length > 0 ? 1 : 2
}

/** Boxes that share less than this are touching only, mm. */
const touching: Mm = 1e-9

function freePlace(label: Label, taken: readonly LabelBox[], lines: readonly LabelBox[]): Point {
  const box = labelBox(label)
  let fallback: Point | undefined
  for (const way of ways(label)) {
    const at = { x: label.at.x + way.x, y: label.at.y + way.y }
    const tried = { ...box, centre: at }
    const cleared = { ...tried, width: box.width + 2 * clearance, height: box.height + 2 * clearance }
    if (taken.some((other) => boxesOverlap(cleared, other))) continue
    if (!lines.some((line) => boxesOverlap(tried, line))) return at
    fallback ??= at
    if (Math.hypot(way.x, way.y) > strokesMindedWithin) return fallback
  }
  return fallback ?? label.at
}

/** Wished place, then shifts that keep the sense, then ring after ring without end: a free place is always met. */
function* ways(label: Label): Generator<Point> {
  if (label.shifts.length === 0) yield { x: 0, y: 0 }
  yield* label.shifts
  for (let ring = 1; ; ring++) {
    for (let step = 0; step < directions; step++) {
      const { cos, sin } = cosSin((step * 360) / directions)
      yield { x: cos * ring * ringStep, y: sin * ring * ringStep }
    }
  }
}

function spread(points: readonly Point[], cos: number, sin: number): [number, number] {
  const along = points.map((point) => point.x * cos + point.y * sin)
  return [Math.min(...along), Math.max(...along)]
}

/** A stroke as a box without height. */
function lineBox({ from, to }: Obstacle): LabelBox {
  const run = { x: to.x - from.x, y: to.y - from.y }
  return {
    centre: { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 },
    width: Math.hypot(run.x, run.y),
    height: 0,
    angle: (Math.atan2(run.y, run.x) * 180) / Math.PI,
  }
}
