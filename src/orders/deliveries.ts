import type { ProductsFile } from "../intake/schema/products.ts"
import type { IsoDate, Kilograms } from "../kernels/units.ts"
import { type Supplier, supplierOf } from "./delivery-dates.ts"
import type { OrderLine } from "./orders.ts"

/** One drop of a supplier, or one trip to collect. */
export interface Drop {
  supplier: string
  collect: boolean
  on: IsoDate
  /** The last day to order: the first of its lines'. */
  orderBy: IsoDate
  lines: OrderLine[]
  /** Mass of what is known of it, kg; `unweighed` counts the lines whose mass is not stated. */
  mass: Kilograms
  unweighed: number
}

/** What should be over when all is done, so that whole packs go back in time. */
export interface Surplus {
  line: OrderLine
  /** Bought and not needed by the net quantities, in the unit of the need: waste, spares and what fills up packs. */
  over: number
  /** Whole packs that this would make, if nothing is wasted. */
  wholePacks: number
}

/** How and when everything comes, where it is put, and what may go back. */
export interface Deliveries {
  drops: Drop[]
  places: ProductsFile["stores"]
  surplus: Surplus[]
}

interface DeliveryTask {
  lines: readonly OrderLine[]
  suppliers: readonly Supplier[]
  stores: ProductsFile["stores"]
}

/** The drops in order of their day, then supplier. */
export function deliveriesOf({ lines, suppliers, stores }: DeliveryTask): Deliveries {
  const keys = [...new Set(lines.map((line) => `${line.comesOn} ${line.product.supplier}`))].sort()
  const drops = keys.map((key): Drop => {
    const own = lines.filter((line) => `${line.comesOn} ${line.product.supplier}` === key)
    const { supplier } = own[0]!.product
    return {
      supplier,
      collect: supplierOf(supplier, suppliers).collect,
      on: own[0]!.comesOn,
      orderBy: own.map((line) => line.orderBy).sort()[0]!,
      lines: own,
      mass: own.reduce((sum, line) => sum + (line.mass ?? 0), 0),
      unweighed: own.filter((line) => line.mass === null).length,
    }
  })
  return { drops, places: stores, surplus: lines.map(surplusOf) }
}

function surplusOf(line: OrderLine): Surplus {
  const over = Math.max(0, line.bought - line.net)
  const holds = Math.min(...line.packs.map((pack) => pack.holds ?? Number.POSITIVE_INFINITY))
  return { line, over, wholePacks: Math.floor(Number((over / holds).toPrecision(12))) }
}

/** Where a line is put when it comes: straight into its rooms, or the place for its kind; null where none was named. */
export function placeOf(line: OrderLine, places: Deliveries["places"]): string | null {
  if (line.straightIn) return line.rooms.join(", ")
  const store = places.find((each) => each.takes.includes(line.product.kind))
  return store ? store.place : null
}
