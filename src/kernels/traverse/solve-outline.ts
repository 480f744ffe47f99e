import { isSimple } from "../polygon/inside.ts"
import { signedArea } from "../polygon/measure.ts"
import type { Point } from "../polygon/point.ts"
import { adjusted } from "./adjust.ts"
import { type Equation, equationsOf, residualIn } from "./equations.ts"
import { firmnessOf } from "./freedom.ts"
import type { OutlineSolution, OutlineSurvey, Residual } from "./survey.ts"
import { suspectsOf } from "./suspects.ts"
import { misclosureOf, openWalk, runLengths, runTurns, shutWalk } from "./walk.ts"

/** Slack for binary rounding when a residual is held against its tolerance. */
const rounding = 1e-9

/**
 * The outline that fits a survey best. Turns that were only assumed bend first; a taped run stays within its tolerance; where all turns
 * were measured and nothing else checks them, the compass rule spreads the gap, if it keeps every run within tolerance.
 * @param survey three runs or more, walked clockwise with the inside on the right hand; lengths above zero; checks between two corners
 * @returns corners (0 at the origin, run 0 along x, y up) with residuals, what is not fixed, and beyond tolerance what was likely misread
 */
export function solveOutline(survey: OutlineSurvey): OutlineSolution {
  const equations = equationsOf(survey)
  const shut = shutWalk(survey.runs)
  const byCompass = isPureTraverse(survey) && agrees(shut, equations)
  const found = byCompass ? shut : bestOutline(shut, equations)
  const closes = runsHold(found, equations)
  const corners = closes ? found : openWalk(survey.runs)
  const plain = closes && signedArea(corners) < 0 && isSimple(corners)
  const ok = plain && agrees(corners, equations)
  const firmness = firmnessOf(corners, equations, survey.tolerances.length)
  const fixed = firmness.freedoms === 0 || firmness.looseness <= (survey.tolerances.shape ?? 0)
  return {
    corners,
    lengths: closes ? runLengths(corners) : survey.runs.map((run) => run.length),
    turns: closes ? runTurns(corners) : survey.runs.map((run) => run.turn),
    residuals: equations.map((equation) => residualOf(corners, equation, closes)),
    misclosure: misclosureOf(survey.runs),
    method: byCompass ? "compass rule" : "least bending",
    closes,
    ok,
    freedoms: firmness.freedoms,
    looseness: firmness.looseness,
    fixed,
    needs: fixed ? [] : firmness.needs,
    suspects: ok ? [] : suspectsOf(survey),
  }
}

/** The adjusted outline; where checks contradict the runs so grossly that a run would leave its tolerance, without the checks. */
function bestOutline(start: readonly Point[], equations: readonly Equation[]): Point[] {
  const { corners } = adjusted(start, equations)
  if (runsHold(corners, equations)) return corners
  const unchecked = equations.filter(({ kind }) => kind !== "check")
  return adjusted(start, unchecked).corners
}

function isPureTraverse({ runs, checks }: OutlineSurvey): boolean {
  return checks.length === 0 && runs.every((run) => run.measured)
}

function agrees(corners: readonly Point[], equations: readonly Equation[]): boolean {
  return equations.every((equation) => isWithin(residualIn(corners, equation), equation))
}

function runsHold(corners: readonly Point[], equations: readonly Equation[]): boolean {
  return agrees(
    corners,
    equations.filter(({ kind }) => kind === "run"),
  )
}

function isWithin(residual: number, equation: Equation): boolean {
  return Math.abs(residual) <= equation.tolerance + rounding
}

/** A residual; in a walk that does not close, runs and turns stand as read. */
function residualOf(corners: readonly Point[], equation: Equation, closes: boolean): Residual {
  const { kind, index, read } = equation
  const asRead = !closes && kind !== "check"
  const residual = asRead ? 0 : residualIn(corners, equation)
  return { kind, index, read, found: read + residual, residual, within: isWithin(residual, equation) }
}
