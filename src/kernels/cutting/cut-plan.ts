import { arrangedBars, filledBars } from "./arrange-bars.ts"
import type { CuttingModel, Pattern } from "./cutting-model.ts"
import { cuttingModel, patternCost } from "./cutting-model.ts"
import { possibleTotals } from "./exact/bounds.ts"
import { Effort } from "./exact/effort.ts"
import { fewerLengths } from "./exact/fewer-lengths.ts"
import { solvePortfolio } from "./exact/portfolio.ts"
import { firstFitPatterns } from "./first-fit.ts"
import { withLargerOffcut } from "./larger-offcut.ts"
import type { CutPlan, CuttingProblem, Unplaced } from "./problem.ts"

/**
 * The plan for the saw: least cost, then fewest bought lengths, then the largest offcut that local exchange finds, with a proved
 * lower bound on the cost. The same problem always gives the same plan. Pieces that no stock takes are data in `unplaced`; where
 * stock runs out, as few of the longest lengths as possible are missing.
 * @param now clock in milliseconds, for benches only: the limit then counts real time, and results may depend on the machine
 * @throws Fault on lengths finer than a tenth of a millimetre, negative figures or costs that are not whole numbers
 */
export async function cutPlan(problem: CuttingProblem, now?: () => number): Promise<CutPlan> {
  const { model, tooLong } = cuttingModel(problem)
  if (model.widths.length === 0) return { ...NOTHING, unplaced: tooLong }
  const effort = new Effort(problem.limitMs ?? DEFAULT_LIMIT_MS, now)
  const solved = await solvePortfolio(model, firstFitPatterns(model), effort)
  const { patterns, fewest } = await fewerLengths(model, solved, effort)
  return planOf(problem, model, { patterns, bound: solved.bound, fewest, tooLong })
}

/** The plan of a saw hand: first-fit decreasing, for comparison. Its bound is the material's. */
export function firstFitDecreasing(problem: CuttingProblem): CutPlan {
  const { model, tooLong } = cuttingModel(problem)
  if (model.widths.length === 0) return { ...NOTHING, unplaced: tooLong }
  const patterns = firstFitPatterns(model)
  const bound = possibleTotals(model, patternCost(model, patterns)).next(0)
  return planOf(problem, model, { patterns, bound, fewest: false, tooLong })
}

/** Search time of an ordinary machine before a plan is given out with a gap. */
const DEFAULT_LIMIT_MS = 10_000
const NOTHING: CutPlan = {
  bars: [],
  cost: 0,
  lengths: 0,
  bound: 0,
  proven: true,
  fewestProven: true,
  unplaced: [],
}

interface Outcome {
  patterns: Pattern[]
  bound: number
  fewest: boolean
  tooLong: Unplaced[]
}

function planOf(
  problem: CuttingProblem,
  model: CuttingModel,
  { patterns, bound, fewest, tooLong }: Outcome,
): CutPlan {
  const total = patternCost(model, patterns)
  const filled = withLargerOffcut(model, filledBars(model, patterns))
  const { bars, unplaced } = arrangedBars(problem, model, filled)
  const cost = bars.reduce((sum, bar) => sum + bar.cost, 0)
  const missing = model.missingCost > 0 ? Math.floor(total / model.missingCost) * model.missingCost : 0
  return {
    bars,
    cost,
    lengths: bars.filter((bar) => !bar.inHand).length,
    bound: Math.min(cost, Math.max(0, bound - missing) * model.divisor),
    proven: bound >= total,
    fewestProven: fewest,
    unplaced: [...tooLong, ...unplaced],
  }
}
