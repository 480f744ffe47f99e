import type { CuttingModel, Pattern } from "../cutting-model.ts"
import { fewestBars } from "./bounds.ts"
import type { Effort } from "./effort.ts"
import type { Solved } from "./portfolio.ts"

/** A plan of the same cost with as few bought lengths as found, and whether fewer are ruled out. */
export interface Fewer {
  patterns: Pattern[]
  fewest: boolean
}

/** Number of bought lengths in patterns. */
export function boughtLengths(model: CuttingModel, patterns: readonly Pattern[]): number {
  return patterns.reduce(
    (sum, { stock, times }) => sum + ((model.stocks[stock]?.cost ?? 0) > 0 ? times : 0),
    0,
  )
}

/** Among plans of the cost reached, one with the fewest bought lengths. */
export async function fewerLengths(model: CuttingModel, solved: Solved, _effort: Effort): Promise<Fewer> {
  const now = boughtLengths(model, solved.patterns)
  const fewest = solved.cost <= solved.bound && fewestBars(model, solved.cost, now) >= now
  return { patterns: solved.patterns, fewest }
}
