import type { Point } from "./polygon/point.ts"
import { addOuter, cholesky, rankOf, type SparseRow, solveCholesky, zeros } from "./traverse/linear.ts"
import type { Degrees, Mm } from "./units.ts"

/** Which figure of a section. */
export type SectionFigure =
  | "left wall"
  | "left slope"
  | "left pitch"
  | "right wall"
  | "right slope"
  | "right pitch"
  | "flat"
  | "floor"
  | "ceiling"

/** A figure as read against the section found. */
export interface SectionResidual {
  figure: SectionFigure
  read: number
  found: number
  /** Found less read. */
  residual: number
  within: boolean
}

/** Height of the left wall, level run and rise of the left slope, width of the flat, level run and rise of the right slope. */
export type Shape = [Mm, Mm, Mm, Mm, Mm, Mm]

/** A figure as read, and how far it is trusted. */
export interface Reading {
  figure: SectionFigure
  read: number
  tolerance: number
}

/** How each figure follows from the shape, mm or degrees. */
export const figures: Record<SectionFigure, (shape: Shape) => number> = {
  "left wall": ([wall]) => wall,
  "left slope": ([, run, rise]) => Math.sqrt(run ** 2 + rise ** 2),
  "left pitch": ([, run, rise]) => pitchOf(run, rise),
  "right wall": ([wall, , rise, , , fall]) => wall + rise - fall,
  "right slope": ([, , , , run, fall]) => Math.sqrt(run ** 2 + fall ** 2),
  "right pitch": ([, , , , run, fall]) => pitchOf(run, fall),
  flat: ([, , , flat]) => flat,
  floor: ([, run, , flat, otherRun]) => run + flat + otherRun,
  ceiling: ([wall, , rise]) => wall + rise,
}

/** Where the search starts: a slope of 45 degrees and sizes of a small attic, mm. */
const firstGuess: Shape = [1000, 1000, 1000, 1000, 1000, 1000]
/** A push to see how a figure changes with the shape, mm. */
const push = 0.01
const steps = 40
const smallStep = 1e-5
/** A figure that changes less than this for 1 mm of the shape tells nothing. */
const telling = 1e-3
/** Slack for binary rounding. */
const rounding = 1e-6

/** How many of the unknown places of a shape some figures tell. */
export function rank(readings: readonly Reading[], unknowns: readonly number[]): number {
  const shape = startOf(unknowns)
  // A shape that is no special case: equal runs and rises would make different figures look alike.
  for (const place of unknowns) shape[place]! *= 1 + place / 10
  const rows = readings.map((reading) => {
    const row = rowOf(shape, reading, unknowns)
    const most = Math.max(...row.factors.map(Math.abs)) || 1
    return { ...row, factors: row.factors.map((factor) => factor / most) }
  })
  return rankOf(rows, unknowns.length, telling)
}

/** The shape that fits figures best: least squares by Gauss-Newton steps, halved while they do not help. */
export function fitted(readings: readonly Reading[], unknowns: readonly number[]): Shape {
  let shape = startOf(unknowns)
  for (let step = 0; step < steps; step++) {
    const normal = zeros(unknowns.length)
    const right = new Float64Array(unknowns.length)
    for (const reading of readings) {
      const row = rowOf(shape, reading, unknowns)
      const weight = 1 / reading.tolerance ** 2
      const off = residualOf(shape, reading).residual
      addOuter(normal, row, weight)
      for (const [i, factor] of row.factors.entries()) right[i]! -= weight * off * factor
    }
    const lower = cholesky(normal)
    if (!lower) break
    const moves = solveCholesky(lower, right)
    const next = better(shape, { readings, unknowns, moves })
    if (!next) break
    shape = next
    if (moves.every((move) => Math.abs(move) < smallStep)) break
  }
  return shape
}

function better(
  shape: Shape,
  {
    readings,
    unknowns,
    moves,
  }: { readings: readonly Reading[]; unknowns: readonly number[]; moves: Float64Array },
): Shape | null {
  const cost = (of: Shape) =>
    readings.reduce((sum, reading) => sum + (residualOf(of, reading).residual / reading.tolerance) ** 2, 0)
  const before = cost(shape)
  for (let share = 1; share > smallStep; share /= 2) {
    const next: Shape = [...shape]
    for (const [i, place] of unknowns.entries()) next[place]! += share * moves[i]!
    if (cost(next) <= before) return next
  }
  return null
}

/** The outline of a shape, from the left foot up and over to the right foot; points that coincide stand once. */
export function profileOf(shape: Shape): Point[] {
  const [wall, run, rise, flat, otherRun, fall] = shape
  const top = wall + rise
  const floor = run + flat + otherRun
  const points = [
    { x: 0, y: 0 },
    { x: 0, y: wall },
    { x: run, y: top },
    { x: run + flat, y: top },
    { x: floor, y: top - fall },
    { x: floor, y: 0 },
  ]
  return points.filter((point, index) => {
    const before = points[(index + points.length - 1) % points.length]!
    return point.x !== before.x || point.y !== before.y
  })
}

/** A figure against a shape. */
export function residualOf(shape: Shape, { figure, read, tolerance }: Reading): SectionResidual {
  const found = figures[figure](shape)
  const residual = found - read
  return { figure, read, found, residual, within: Math.abs(residual) <= tolerance + rounding }
}

function rowOf(shape: Shape, { figure }: Reading, unknowns: readonly number[]): SparseRow {
  const value = figures[figure]
  const factors = unknowns.map((place) => {
    const at = (by: number) => {
      const pushed: Shape = [...shape]
      pushed[place]! += by
      return value(pushed)
    }
    return (at(push) - at(-push)) / (2 * push)
  })
  return { places: unknowns.map((_, index) => index), factors }
}

function startOf(unknowns: readonly number[]): Shape {
  return firstGuess.map((size, place) => (unknowns.includes(place) ? size : 0)) as Shape
}

function pitchOf(run: Mm, rise: Mm): Degrees {
  return (Math.atan2(rise, run) * 180) / Math.PI
}
