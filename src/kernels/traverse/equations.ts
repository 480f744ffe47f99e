import { turnAt } from "../polygon/angles.ts"
import { distance, type Point } from "../polygon/point.ts"
import type { SparseRow } from "./linear.ts"
import type { MeasurementRef, OutlineSurvey } from "./survey.ts"

/** One measurement as an equation: what it reads, how far it may be off, and whether it is left out. */
export interface Equation extends MeasurementRef {
  read: number
  tolerance: number
  /** Corners it depends on, in order: two for a length, three for a turn. */
  corners: readonly number[]
  /** Only assumed, not measured. */
  assumed: boolean
}

/** All measurements of a survey as equations: runs, turns, checks, in their order. */
export function equationsOf({ runs, checks, tolerances }: OutlineSurvey): Equation[] {
  const count = runs.length
  const next = (corner: number) => (corner + 1) % count
  return [
    ...runs.map(({ length }, index) => ({
      kind: "run" as const,
      index,
      read: length,
      tolerance: tolerances.length,
      corners: [index, next(index)],
      assumed: false,
    })),
    ...runs.map(({ turn, measured }, index) => ({
      kind: "turn" as const,
      index,
      read: turn,
      tolerance: measured ? tolerances.measuredTurn : tolerances.assumedTurn,
      corners: [index, next(index), next(next(index))],
      assumed: !measured,
    })),
    ...checks.map(({ from, to, length }, index) => ({
      kind: "check" as const,
      index,
      read: length,
      tolerance: tolerances.length,
      corners: [from, to],
      assumed: false,
    })),
  ]
}

/** What an equation measures in an outline: mm, or degrees. */
export function valueIn(corners: readonly Point[], equation: Pick<Equation, "corners">): number {
  const [a, b, c] = equation.corners.map((corner) => corners[corner]!)
  return c ? turnAt(a!, b!, c) : distance(a!, b!)
}

/** Value in an outline less what was read; turns within half a circle. */
export function residualIn(corners: readonly Point[], equation: Equation): number {
  const off = valueIn(corners, equation) - equation.read
  if (equation.kind !== "turn") return off
  return off - 360 * Math.round(off / 360)
}

/**
 * How the value of an equation changes as corners move: mm or degrees for each mm.
 * Unknowns are x of corner 1, then x and y of each further corner; corner 0 and the direction of run 0 are given.
 */
export function gradientIn(corners: readonly Point[], equation: Pick<Equation, "corners">): SparseRow {
  const places: number[] = []
  const factors: number[] = []
  const add = (corner: number, dx: number, dy: number) => {
    if (corner === 0) return
    places.push(corner === 1 ? 0 : 2 * corner - 3)
    factors.push(dx)
    if (corner === 1) return
    places.push(2 * corner - 2)
    factors.push(dy)
  }
  const [a, b, c] = equation.corners as [number, number, number?]
  if (c === undefined) {
    const { x, y } = unit(corners[a]!, corners[b]!)
    add(a, -x, -y)
    add(b, x, y)
  } else {
    const arrive = swing(corners[a]!, corners[b]!)
    const leave = swing(corners[b]!, corners[c]!)
    add(a, -arrive.x, -arrive.y)
    add(b, arrive.x + leave.x, arrive.y + leave.y)
    add(c, -leave.x, -leave.y)
  }
  return { places, factors }
}

/** Number of unknowns of an outline: two for each corner, less place and direction of the whole. */
export function unknownsOf(corners: number): number {
  return 2 * corners - 3
}

function unit(from: Point, to: Point): Point {
  const length = distance(from, to) || 1
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length }
}

/** Change of heading, degrees, for each mm that the far end moves along x or y. */
function swing(from: Point, to: Point): Point {
  const along = unit(from, to)
  const perMm = 180 / Math.PI / (distance(from, to) || 1)
  return { x: -along.y * perMm, y: along.x * perMm }
}
