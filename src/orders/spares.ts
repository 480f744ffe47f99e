import type { Product } from "../intake/schema/products.ts"
import type { CutPlan } from "../kernels/cutting/problem.ts"
import { type Money, money } from "../kernels/money.ts"
import type { Mm } from "../kernels/units.ts"
import type { Rules } from "../rulebook/rules.ts"
import type { Piece } from "../trades/trade.ts"

/** Lengths bought over the plan, so that a mis-cut does not stop the work. */
export interface Spares {
  length: Mm
  count: number
  price: Money
  /** The longest piece of the profile, and how often it can be cut again from spares and offcuts: so many mis-cuts of any pieces. */
  longest: Mm
  survives: number
}

type LengthGood = Extract<Product, { kind: "length" }>

/**
 * Spare lengths of a profile by its material's rule: one in so many of the lengths bought, at least the rulebook's least. They are of
 * the cheapest length that holds the longest piece, as far as there are any left. Null where nothing is sawn or nothing is left to buy.
 */
export function sparesOf(
  product: LengthGood,
  { plan, pieces }: { plan: CutPlan; pieces: readonly Piece[] },
  rules: Rules,
): Spares | null {
  if (plan.bars.length === 0) return null
  const trims = 2 * rules.value("saw-end-trim")
  const placed = new Set(plan.bars.flatMap((bar) => bar.pieces))
  const longest = Math.max(...pieces.filter((piece) => placed.has(piece.mark)).map((piece) => piece.length))
  const left = ({ length, available = Number.POSITIVE_INFINITY }: LengthGood["lengths"][number]) =>
    available - plan.bars.filter((bar) => !bar.inHand && bar.length === length).length
  const had = product.lengths.filter((each) => left(each) > 0)
  if (had.length === 0) return null
  const holding = had.filter((each) => each.length - trims >= longest)
  const offered = holding.length > 0 ? holding : had
  const stock = offered.reduce((best, each) => (money(each.price).lt(money(best.price)) ? each : best))
  const share = Math.ceil(plan.lengths / rules.value(`saw-spare-${product.material}`))
  const count = Math.min(left(stock), Math.max(share, rules.value("saw-spare-least")))
  const kerf = rules.value("saw-kerf")
  const again = (room: Mm) => Math.max(0, Math.floor((room + kerf) / (longest + kerf)))
  const fromOffcuts = plan.bars.reduce((sum, bar) => sum + again(bar.offcut), 0)
  return {
    length: stock.length,
    count,
    price: money(stock.price),
    longest,
    survives: count * again(stock.length - trims) + fromOffcuts,
  }
}
