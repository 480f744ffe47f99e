import type { CuttingModel, Pattern } from "../cutting-model.ts"
import { fewestBars, possibleTotals } from "./bounds.ts"
import type { Effort } from "./effort.ts"
import { branchedPlan } from "./pattern-branching.ts"
import { worthwhilePatterns } from "./pattern-enumeration.ts"
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

/**
 * Among plans of the proved cost, one with the fewest bought lengths: ruled out by material where that suffices, else searched among
 * the patterns that a plan of this cost can need, with each length made dearer by a share of a unit that never adds up to one.
 */
export async function fewerLengths(model: CuttingModel, solved: Solved, effort: Effort): Promise<Fewer> {
  const { patterns, cost, bound, proved } = solved
  if (cost > bound) return { patterns, fewest: false }
  const now = boughtLengths(model, patterns)
  const paid = new Set(model.stocks.filter((stock) => stock.cost > 0).map((stock) => stock.cost))
  if (paid.size <= 1) return { patterns, fewest: true }
  const least = fewestBars(model, cost, now)
  if (least >= now) return { patterns, fewest: true }
  if (proved === undefined) return { patterns, fewest: false }
  const columns = worthwhilePatterns(model, proved, cost - proved.bound, PATTERNS_AT_MOST, effort)
  if (columns === undefined) return { patterns, fewest: false }
  const share = now + 1
  const stocks = model.stocks.map((stock) => ({
    ...stock,
    cost: stock.cost > 0 ? stock.cost * share + 1 : 0,
  }))
  const counted = { ...model, stocks }
  const totals = possibleTotals(counted, cost * share + now)
  const asked = { atMost: cost * share + now - 1, target: cost * share + least, totals, nodes: NODES_AT_MOST }
  const { plan, complete } = await branchedPlan(counted, columns, asked, effort)
  return { patterns: plan ?? patterns, fewest: complete }
}

/** Patterns and nodes that fewer lengths at the same cost are worth. */
const PATTERNS_AT_MOST = 3_000
const NODES_AT_MOST = 60
