import { isSimple } from "../polygon/inside.ts"
import { signedArea } from "../polygon/measure.ts"
import type { Point } from "../polygon/point.ts"
import { roundHalfUp } from "../units.ts"
import { type Adjusted, adjusted, costWithin } from "./adjust.ts"
import { type Equation, equationsOf, residualIn, valueIn } from "./equations.ts"
import { deviationOf } from "./freedom.ts"
import { lengthMends, type Mend, turnMends } from "./mends.ts"
import type { MeasurementRef, OutlineSurvey, Run, Suspect } from "./survey.ts"
import { legsOf, misclosureOf, shutWalk } from "./walk.ts"

/** A plain misread can be any figure, so it explains more too easily; it must be this much cheaper than a slip with a name. */
const misreadSurcharge = 9
/** Suspects whose costs differ by less explain it equally (odds of less than about four to one). */
const equalWithin = 3
/** A slip with a name is tried unless, as reckoned in a straight line, it would cost this many times what is within tolerance. */
const hopefulTimes = 4
/** A suspect is kept if its cost is within this much of the best. */
const keptWithin = 40
const shortestRun = 10

type Tried = Omit<Suspect, "likeliest">

/**
 * What was most likely read wrong, if one measurement was: every measurement is mended alone in every way that people slip, the outline is
 * solved again, and the mends that leave all the rest within tolerance are ranked by what remains.
 * @returns likeliest first, one entry a measurement; empty if no single mend explains it
 */
export function suspectsOf(survey: OutlineSurvey): Suspect[] {
  const tried = equationsOf(survey).flatMap((equation) => bestOf(triesOf(survey, equation)))
  tried.sort((a, b) => a.cost - b.cost)
  const least = tried[0]?.cost ?? 0
  return tried
    .filter(({ cost }) => cost <= least + keptWithin)
    .map((suspect) => ({ ...suspect, likeliest: suspect.cost <= least + equalWithin }))
}

function bestOf(tries: Tried[]): Tried[] {
  const [first, ...rest] = tries
  return first ? [rest.reduce((best, other) => (other.cost < best.cost ? other : best), first)] : []
}

function triesOf(survey: OutlineSurvey, equation: Equation): Tried[] {
  const { kind, read } = equation
  if (kind === "turn") {
    const flipped = turnMends(read).flatMap((mend) => tryMend(survey, equation, mend))
    return equation.assumed ? flipped : [...flipped, ...tryFree(survey, equation, freed(survey, equation))]
  }
  if (!canTurnFull(survey)) return []
  const free = freed(survey, equation)
  const named = lengthMends(read)
    .filter(({ meant }) => mayFit(survey, equation, free, meant))
    .flatMap((mend) => tryMend(survey, equation, mend))
  return [...named, ...tryFree(survey, equation, free)]
}

/** True unless a figure lies so far from the one that fits best that the rest could not be within tolerance. */
function mayFit(survey: OutlineSurvey, equation: Equation, free: Adjusted, meant: number): boolean {
  const rest = equationsOf(survey).filter((other) => !isSame(other, equation))
  const most = hopefulTimes * costWithin(rest)
  const spread = deviationOf(free.corners, rest, equation)
  const off = meant - valueIn(free.corners, equation)
  return free.cost + off ** 2 / (spread ** 2 + equation.tolerance ** 2) <= most
}

/** True if the turns as read can make a full circle within their tolerances. */
function canTurnFull(survey: OutlineSurvey): boolean {
  const slack = equationsOf(survey).reduce(
    (sum, { kind, tolerance }) => sum + (kind === "turn" ? tolerance : 0),
    0,
  )
  return Math.abs(misclosureOf(survey.runs).turn) <= slack
}

function tryMend(survey: OutlineSurvey, { kind, index, read }: Equation, mend: Mend): Tried[] {
  const mended = withReading(survey, kind, index, mend.meant)
  if (!canTurnFull(mended)) return []
  const equations = equationsOf(mended)
  const { corners, cost } = adjusted(shutWalk(mended.runs), equations, "while hopeful")
  if (!explains(corners, mended)) return []
  return [{ kind, index, read, meant: mend.meant, mishap: mend.mishap, cost }]
}

function tryFree(survey: OutlineSurvey, equation: Equation, { corners, cost }: Adjusted): Tried[] {
  const { kind, index, read, tolerance } = equation
  if (!explains(corners, survey, equation)) return []
  const fits = valueIn(corners, equation)
  if (Math.abs(fits - read) <= tolerance) return []
  const meant = roundHalfUp(fits, kind === "turn" ? 1 : 0)
  return [{ kind, index, read, meant, mishap: "misread", cost: cost + misreadSurcharge }]
}

/** The outline that fits all measurements but one. */
function freed(survey: OutlineSurvey, left: Equation): Adjusted {
  const equations = equationsOf(survey).filter(
    ({ kind, index }) => kind !== left.kind || index !== left.index,
  )
  const runs = left.kind === "run" ? withClosingRun(survey.runs, left.index) : survey.runs
  return adjusted(shutWalk(runs), equations, "while hopeful")
}

/** The walk with one run as long as closes it best. */
function withClosingRun(runs: readonly Run[], index: number): Run[] {
  const { x, y } = misclosureOf(runs)
  const heading = (legsOf(runs)[index]!.heading * Math.PI) / 180
  const over = x * Math.cos(heading) + y * Math.sin(heading)
  return runs.map((run, i) =>
    i === index ? { ...run, length: Math.max(shortestRun, run.length - over) } : run,
  )
}

/** True if an outline is a plain clockwise one and every measurement, but for one left out, is within its tolerance. */
function explains(corners: readonly Point[], survey: OutlineSurvey, left?: MeasurementRef): boolean {
  const agree = equationsOf(survey).every(
    (equation) =>
      (left && isSame(equation, left)) || Math.abs(residualIn(corners, equation)) <= equation.tolerance,
  )
  return agree && signedArea(corners) < 0 && isSimple(corners)
}

function isSame(a: MeasurementRef, b: MeasurementRef): boolean {
  return a.kind === b.kind && a.index === b.index
}

function withReading(
  survey: OutlineSurvey,
  kind: Equation["kind"],
  index: number,
  reading: number,
): OutlineSurvey {
  if (kind === "check") {
    const checks = survey.checks.map((check, i) => (i === index ? { ...check, length: reading } : check))
    return { ...survey, checks }
  }
  const key = kind === "run" ? "length" : "turn"
  return { ...survey, runs: survey.runs.map((run, i) => (i === index ? { ...run, [key]: reading } : run)) }
}
