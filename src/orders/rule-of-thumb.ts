import { type Money, money } from "../kernels/money.ts"
import type { Mm } from "../kernels/units.ts"
import type { Rules } from "../rulebook/rules.ts"
import type { CutList } from "./orders.ts"

/** A profile ordered by rule of thumb, beside what its plan buys (spares left out of both). */
export interface RuleOfThumb {
  /** Waste added by rule of thumb, %. */
  percent: number
  /** The length it is ordered in, how many, what they cost. */
  length: Mm
  lengths: number
  cost: Money
  /** What the plan buys. */
  planLengths: number
  planMetres: number
  planCost: Money
}

/**
 * The same pieces ordered by run and a waste in per cent, in whole lengths of the kind that the plan buys most of. Lengths in hand that
 * the plan saws are taken off the run. Null where the plan buys nothing.
 */
export function ruleOfThumb({ product, pieces, plan }: CutList, rules: Rules): RuleOfThumb | null {
  const bought = plan.bars.filter((bar) => !bar.inHand)
  const priced = product.lengths.map((each) => {
    const count = bought.filter((bar) => bar.length === each.length).length
    return { ...each, count, cost: money(each.price).times(count) }
  })
  const most = priced.reduce((best, each) =>
    each.count * each.length > best.count * best.length ? each : best,
  )
  if (most.count === 0) return null
  const percent = rules.value("joinery-waste")
  const inHand = plan.bars.filter((bar) => bar.inHand).reduce((sum, bar) => sum + bar.length, 0)
  const run = pieces.reduce((sum, piece) => sum + piece.length, 0)
  const need = Math.max(0, run * (1 + percent / percentOf) - inHand)
  const lengths = Math.ceil(Number((need / most.length).toPrecision(12)))
  return {
    percent,
    length: most.length,
    lengths,
    cost: money(most.price).times(lengths),
    planLengths: bought.length,
    planMetres: bought.reduce((sum, bar) => sum + bar.length, 0) / 1000,
    planCost: priced.reduce((sum, each) => sum.plus(each.cost), money(0)),
  }
}

const percentOf = 100
