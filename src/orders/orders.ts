import type { Product } from "../intake/schema/products.ts"
import type { CutPlan } from "../kernels/cutting/problem.ts"
import type { Finding } from "../kernels/finding.ts"
import type { Money } from "../kernels/money.ts"
import type { IsoDate, Kilograms, Mm } from "../kernels/units.ts"
import type { Stage } from "../trades/stages.ts"
import type { Piece } from "../trades/trade.ts"
import type { Spares } from "./spares.ts"

/** One size of a product to be bought: a pack, a roll, a length, a tin. */
export interface Pack {
  /** What one is: `pack of 8`, `4,400 length`, `5 l tin`. */
  size: string
  count: number
  price: Money
  /** What one holds, in the unit of the need, and its length where that is what one buys, mm. */
  holds?: number
  length?: Mm
}

/** What one trade takes of a product in one room, or across the job. */
export interface ProductUse {
  trade: string
  room: string | null
  net: number
  gross: number
  /** The stage of the work that it is first used at; null where nothing is dated. */
  stage: Stage | null
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
  uses: ProductUse[]
  trades: string[]
  rooms: string[]
  /** First day it is needed on site. */
  neededOn: IsoDate
  /** The first and the last day on which it may come. */
  earliest: IsoDate
  latest: IsoDate
  /** Why it must not come earlier, where early is wrong. */
  notBefore: string | null
  /** True if it is carried straight into the rooms on the day it comes. */
  straightIn: boolean
  /** The day it comes, grouped with what else its supplier brings, and the last day to order it for that. */
  comesOn: IsoDate
  orderBy: IsoDate
  /** True if the last day to order lies before the day the pack was prepared. */
  late: boolean
  /** Mass of the heaviest single pack and of the whole line, kg; null where the product's mass is not known. */
  packMass: Kilograms | null
  mass: Kilograms | null
  /** Its longest side, mm; 0 where that does not matter. */
  longest: Mm
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
