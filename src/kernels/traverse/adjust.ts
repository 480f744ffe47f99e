import type { Point } from "../polygon/point.ts"
import { type Equation, gradientIn, residualIn, unknownsOf } from "./equations.ts"
import { addOuter, cholesky, type SparseRow, solveCholesky, zeros } from "./linear.ts"

/** An outline adjusted to its measurements. */
export interface Adjusted {
  corners: Point[]
  /** Sum of squares of all residuals, each over its standard deviation, with the surcharge for those beyond their tolerance. */
  cost: number
}

/** A tolerance is taken as two standard deviations. */
const deviationsInTolerance = 2
/** Runs are held this far inside their tolerance, mm, so that what the steep wall gives way stays within it. */
const insideBy = 0.05
/** Steepness of the wall at the tolerance of a run, of a check and of a measured turn, as multiples of its own weight. */
const wall = { run: 1e6, check: 10, turn: 10 } as const
/** Beyond so many tolerances a check or measured turn pulls no harder. */
const reachInTolerances = 5
const mostSteps = 60
/** A search for a mend gives up after so many steps if the cost is still so many times what lets all residuals be within tolerance. */
const doubtfulAfter = 6
const hopelessTimes = 30
/** Rounds to find which walls a step runs into. */
const mostRounds = 6
/** Damping as a share of the diagonal: it grows tenfold when a step makes things worse and shrinks when it helps. */
const firstDamping = 1e-6
const leastDamping = 1e-12
const mostDamping = 1e8
/** An undamped step that gains less than this share of the cost ends the search. */
const smallGain = 1e-10
/** Steps smaller than this end the search, mm. */
const smallStep = 1e-7

/**
 * The outline that fits best: least squares, each residual over its standard deviation, so that loosely known turns bend first.
 * Runs do not leave their tolerance (a wall so steep that it gives way less than 0.05 mm); checks and measured turns leave theirs only
 * where they contradict the runs. Damped Gauss-Newton steps (Levenberg and Marquardt) from the corners given.
 */
export function adjusted(
  start: readonly Point[],
  equations: readonly Equation[],
  search: "to the end" | "while hopeful" = "to the end",
): Adjusted {
  const hopeless = search === "to the end" ? Number.POSITIVE_INFINITY : hopelessTimes * costWithin(equations)
  let best: Adjusted = { corners: [...start], cost: costOf(start, equations) }
  let damping = firstDamping
  for (let step = 0; step < mostSteps; step++) {
    if (step >= doubtfulAfter && best.cost > hopeless) break
    const moves = movesFrom(best.corners, equations, damping)
    const corners = moves ? moved(best.corners, moves) : best.corners
    const cost = moves ? costOf(corners, equations) : Number.POSITIVE_INFINITY
    if (cost < best.cost) {
      const gained = best.cost - cost
      best = { corners, cost }
      const free = damping <= firstDamping
      damping = Math.max(damping / 10, leastDamping)
      if (largest(moves!) < smallStep || (free && gained < smallGain * (1 + cost))) break
    } else {
      if (moves && largest(moves) < smallStep) break
      damping *= 10
      if (damping > mostDamping) break
    }
  }
  return best
}

/** Cost of an outline as it stands; see `Adjusted`. */
export function costOf(corners: readonly Point[], equations: readonly Equation[]): number {
  let cost = 0
  for (const equation of equations) cost += penalty(residualIn(corners, equation), equation)
  return cost
}

/** Squares up to the reach of an equation, beyond it on in a straight line, so that one gross misread does not bend all the rest. */
function penalty(residual: number, equation: Equation): number {
  const reach = reachOf(equation)
  const size = Math.abs(residual)
  const within = Math.min(size, reach)
  const squares = weightOf(equation) * within ** 2 + wallWeight(equation) * excess(within, equation) ** 2
  return size > reach ? squares + 2 * pullAt(reach, equation) * (size - reach) : squares
}

/** Half the rise of the penalty at a residual within reach. */
function pullAt(residual: number, equation: Equation): number {
  return weightOf(equation) * residual + wallWeight(equation) * excess(residual, equation)
}

function reachOf({ kind, assumed, tolerance }: Equation): number {
  return kind === "run" || assumed ? Number.POSITIVE_INFINITY : reachInTolerances * tolerance
}

/** The most that an outline can cost whose residuals are all within tolerance. */
export function costWithin(equations: readonly Equation[]): number {
  return equations.length * deviationsInTolerance ** 2
}

/** Weight of an equation: one over its standard deviation squared. */
export function weightOf(equation: Equation): number {
  return (deviationsInTolerance / equation.tolerance) ** 2
}

function wallWeight(equation: Equation): number {
  return equation.assumed ? 0 : wall[equation.kind] * weightOf(equation)
}

/** By how much a residual lies beyond what its equation allows, with its sign. */
function excess(residual: number, equation: Equation): number {
  return Math.sign(residual) * Math.max(0, Math.abs(residual) - allowed(equation))
}

function allowed({ kind, tolerance }: Equation): number {
  return kind === "run" ? Math.max(0, tolerance - insideBy) : tolerance
}

/** One measurement about an outline: what it is off by, and how that changes as corners move. */
interface Line {
  equation: Equation
  row: SparseRow
  residual: number
}

/**
 * The step that would be best if all measurements changed evenly with the corners. Which walls it runs into is not known beforehand:
 * it is solved again with those it ran into, until they stay the same.
 */
function movesFrom(
  corners: readonly Point[],
  equations: readonly Equation[],
  damping: number,
): Float64Array | null {
  const lines = equations.map((equation): Line => {
    return { equation, row: gradientIn(corners, equation), residual: residualIn(corners, equation) }
  })
  const size = unknownsOf(corners.length)
  let moves: Float64Array | null = null
  let beyond = lines.map(({ equation, residual }) => Math.sign(excess(residual, equation)))
  for (let round = 0; round < mostRounds; round++) {
    moves = solved(lines, beyond, { size, damping })
    if (!moves) return null
    const after = lines.map((line) =>
      Math.sign(excess(line.residual + along(line.row, moves!), line.equation)),
    )
    if (after.every((sign, index) => sign === beyond[index])) break
    beyond = after
  }
  return moves
}

function solved(
  lines: readonly Line[],
  beyond: readonly number[],
  { size, damping }: { size: number; damping: number },
): Float64Array | null {
  const normal = zeros(size)
  const right = new Float64Array(size)
  for (let index = 0; index < lines.length; index++) {
    const { equation, row, residual } = lines[index]!
    const side = beyond[index]!
    const reach = reachOf(equation)
    const steep = side === 0 ? 0 : wallWeight(equation)
    const far = Math.abs(residual) > reach
    const pull = far
      ? Math.sign(residual) * pullAt(reach, equation)
      : weightOf(equation) * residual + steep * (residual - side * allowed(equation))
    addOuter(normal, row, far ? pull / residual : weightOf(equation) + steep)
    for (let i = 0; i < row.places.length; i++) right[row.places[i]!]! -= pull * row.factors[i]!
  }
  for (let place = 0; place < size; place++) normal.cells[place * (size + 1)]! *= 1 + damping
  const lower = cholesky(normal)
  return lower && solveCholesky(lower, right)
}

function along(row: SparseRow, moves: Float64Array): number {
  let sum = 0
  for (let i = 0; i < row.places.length; i++) sum += row.factors[i]! * moves[row.places[i]!]!
  return sum
}

function moved(corners: readonly Point[], moves: Float64Array): Point[] {
  return corners.map(({ x, y }, corner) => {
    if (corner === 0) return { x, y }
    if (corner === 1) return { x: x + moves[0]!, y }
    return { x: x + moves[2 * corner - 3]!, y: y + moves[2 * corner - 2]! }
  })
}

function largest(values: Float64Array): number {
  return values.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
}
