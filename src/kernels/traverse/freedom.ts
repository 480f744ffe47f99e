import { contains } from "../polygon/inside.ts"
import { between, type Point } from "../polygon/point.ts"
import { edgesOf, regionOf } from "../polygon/region.ts"
import type { Mm } from "../units.ts"
import { weightOf } from "./adjust.ts"
import { type Equation, gradientIn, unknownsOf } from "./equations.ts"
import { addOuter, cholesky, type Matrix, rankOf, type SparseRow, solveCholesky, zeros } from "./linear.ts"

/** How firmly measurements hold a shape. */
export interface Firmness {
  /** Ways the shape can move with every taped length and measured turn kept. */
  freedoms: number
  /** Most that a distance between corners may vary within the tolerance of every measurement and assumed turn. */
  looseness: Mm
  /** Check lengths that would take the freedoms away, the most telling first. */
  needs: { from: number; to: number }[]
}

interface Pair {
  from: number
  to: number
}

/** A measurement that moves less than this for 1 mm of corner counts as telling nothing: it would need a tape fifty times better. */
const telling = 0.02
/** Of two checks that tell nearly as much, the one from the lower corner is asked for. */
const nearlyAsMuch = 0.97
/** Shares of the way at which a check is tried for passing through a wall. */
const tryAt = [0.02, 0.25, 0.5, 0.75, 0.98]

/** How firmly an outline is held, and which checks would fix it; checks that can be taped inside the outline come first. */
export function firmnessOf(
  corners: readonly Point[],
  equations: readonly Equation[],
  checkTolerance: Mm,
): Firmness {
  const size = unknownsOf(corners.length)
  const held = equations
    .filter((equation) => !equation.assumed)
    .map((equation) => plainRow(corners, equation))
  const freedoms = size - rankOf(held, size, telling)
  const information = zeros(size)
  for (const equation of equations) addOuter(information, gradientIn(corners, equation), weightOf(equation))
  const pairs = pairsOf(corners, equations)
  const looseness = 2 * Math.max(0, ...deviations(corners, information, pairs))
  const needs = wanted(corners, { held, information, pairs, freedoms, checkTolerance })
  return { freedoms, looseness, needs }
}

/** Standard deviation of a length between two corners, as all the measurements given leave it; infinite if they leave it free. */
export function deviationOf(
  corners: readonly Point[],
  equations: readonly Equation[],
  { corners: [from, to] }: Pick<Equation, "corners">,
): Mm {
  const information = zeros(unknownsOf(corners.length))
  for (const equation of equations) addOuter(information, gradientIn(corners, equation), weightOf(equation))
  return deviations(corners, information, [{ from: from!, to: to! }])[0]!
}

interface Wanting {
  held: SparseRow[]
  information: Matrix
  pairs: Pair[]
  freedoms: number
  checkTolerance: Mm
}

/** Checks one by one, each time the one whose length is least known, that takes a freedom away. */
function wanted(corners: readonly Point[], wanting: Wanting): Pair[] {
  const { held, information, freedoms, checkTolerance } = wanting
  const { size } = information
  const needs: Pair[] = []
  const rows = [...held]
  let pairs = [...wanting.pairs].sort(
    (a, b) => Number(isTapeable(corners, b)) - Number(isTapeable(corners, a)),
  )
  while (needs.length < freedoms && pairs.length > 0) {
    const pair = leastKnown(corners, information, pairs)
    const row = gradientIn(corners, { corners: [pair.from, pair.to] })
    pairs = pairs.filter((other) => other !== pair)
    if (rankOf([...rows, row], size, telling) <= size - freedoms + needs.length) continue
    rows.push(row)
    addOuter(information, row, (2 / checkTolerance) ** 2)
    needs.push(pair)
  }
  return needs
}

function leastKnown(corners: readonly Point[], information: Matrix, pairs: readonly Pair[]): Pair {
  const tapeable = pairs.filter((pair) => isTapeable(corners, pair))
  const among = tapeable.length > 0 ? tapeable : pairs
  const spreads = deviations(corners, information, among)
  const most = Math.max(...spreads)
  return among[spreads.findIndex((spread) => spread >= most * nearlyAsMuch)]!
}

/** Standard deviation of the distance between each pair of corners. */
function deviations(corners: readonly Point[], information: Matrix, pairs: readonly Pair[]): Mm[] {
  const lower = cholesky(information)
  if (!lower) return pairs.map(() => Number.POSITIVE_INFINITY)
  return pairs.map(({ from, to }) => {
    const row = gradientIn(corners, { corners: [from, to] })
    const right = new Float64Array(information.size)
    for (const [i, place] of row.places.entries()) right[place] = row.factors[i]!
    const solved = solveCholesky(lower, right)
    const variance = row.places.reduce((sum, place, i) => sum + row.factors[i]! * solved[place]!, 0)
    return Math.sqrt(Math.max(0, variance))
  })
}

/** Gradient in mm for each mm: a turn counts by the way that the shorter run's far end would go. */
function plainRow(corners: readonly Point[], equation: Equation): SparseRow {
  const row = gradientIn(corners, equation)
  if (equation.kind !== "turn") return row
  const most = Math.max(...row.factors.map(Math.abs)) || 1
  return { places: row.places, factors: row.factors.map((factor) => factor / most) }
}

function pairsOf(corners: readonly Point[], equations: readonly Equation[]): Pair[] {
  const taken = new Set(
    equations.filter(({ kind }) => kind !== "turn").map(({ corners: [a, b] }) => key(a!, b!)),
  )
  const pairs: Pair[] = []
  for (let from = 0; from < corners.length; from++) {
    for (let to = from + 1; to < corners.length; to++) if (!taken.has(key(from, to))) pairs.push({ from, to })
  }
  return pairs
}

function key(a: number, b: number): string {
  return a < b ? `${a}-${b}` : `${b}-${a}`
}

/** True if a tape can be held straight between two corners without leaving the room. */
function isTapeable(corners: readonly Point[], { from, to }: Pair): boolean {
  const a = corners[from]!
  const b = corners[to]!
  const room = regionOf(corners)
  if (!tryAt.every((share) => contains(room, between(a, b, share)))) return false
  return edgesOf(corners).every(({ from: c, to: d }) => !crossProperly(a, b, c, d))
}

function crossProperly(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x)
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0
}
