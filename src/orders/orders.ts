import type { Product } from "../intake/schema/products.ts"
import type { CutPlan } from "../kernels/cutting/problem.ts"
import type { Finding } from "../kernels/finding.ts"
import type { Money } from "../kernels/money.ts"
import type { IsoDate, Mm } from "../kernels/units.ts"
import type { Piece } from "../trades/trade.ts"
import type { Spares } from "./spares.ts"

/** One size of a product to be bought: a pack, a roll, a length, a tin. */
export interface Pack {
  /** What one is: `pack of 8`, `4,400 length`, `5 l tin`. */
  size: string
  count: number
  price: Money
}

/** One product of the order. */
export interface OrderLine {
  product: Product
  /** Net need and need with waste and spares, in `unit`. */
  net: number
  gross: number
  unit: string
  packs: Pack[]
  /** What the packs hold together, in `unit`. */
  bought: number
  total: Money
  trades: string[]
  rooms: string[]
  /** First day it is needed on site, and the last day to order it. */
  neededOn: IsoDate
  orderBy: IsoDate
  /** True if the last day to order lies before the day the pack was prepared. */
  late: boolean
  /** How it gets up the stair, if it is long or heavy. */
  carry: string | null
}

/** The pieces of one product and the plan to saw them. */
export interface CutList {
  product: Extract<Product, { kind: "length" }>
  pieces: Piece[]
  plan: CutPlan
  /** Lengths longer than what goes up the stair are cut below. */
  cutBelow: Mm | null
  /** Bought over the plan; null where nothing is sawn. */
  spares: Spares | null
}

/** Everything to be bought, and how the lengths are sawn. */
export interface Orders {
  lines: OrderLine[]
  cutLists: CutList[]
  findings: Finding[]
}
