import type { Product } from "../intake/schema/products.ts"
import { Fault } from "../kernels/fault.ts"
import { lineTotal, money } from "../kernels/money.ts"
import { leastCostTins } from "../kernels/tins.ts"
import { mmText } from "../kernels/units.ts"
import type { CutList, Pack } from "./orders.ts"

/** Whole packs for a need, never short: rounded up after waste. */
export interface Packed {
  packs: Pack[]
  /** What they hold together, in the unit of the need. */
  bought: number
}

/**
 * Whole packs, rolls, tins or boxes of a product that hold at least a need.
 * @param need with waste and spares, in the unit the product is used by (m2, l, nr, kg, m)
 * @param cutList the saw plan where the product comes in lengths: it says how many of each, and how many to spare
 */
export function packsFor(product: Product, need: number, cutList?: CutList): Packed {
  switch (product.kind) {
    case "board": {
      const run = product.mix
        ? product.mix.reduce((sum, each) => sum + each.length * each.perPack, 0)
        : product.length * product.perPack
      const area = (product.width * run) / 1_000_000
      const price = money(product.pricePerM2).times(area)
      const size = `pack of ${product.perPack}${product.mix ? ", mixed lengths" : ""}`
      return whole(need, area, size, String(price))
    }
    case "roll":
      return whole(need, product.area, `roll of ${product.area} m²`, product.price)
    case "leaf":
      return whole(need, 1, "leaf", product.price)
    case "each":
      return whole(need, product.holds, product.unit, product.price)
    case "tile": {
      const area = (product.width * product.height * product.perBox) / 1_000_000
      return whole(need, area, `box of ${product.perBox}`, product.price)
    }
    case "liquid": {
      const choice = leastCostTins(need, product.tins)
      const packs = choice.tins.map((tin) => ({
        size: `${tin.litres} l tin`,
        count: tin.count,
        holds: tin.litres,
        price: money(product.tins.find((each) => each.litres === tin.litres)!.price),
      }))
      return { packs, bought: choice.litres }
    }
    case "length":
      return lengthsFor(product, cutList)
  }
}

/** The price of packs, each line rounded to pence. */
export function packsTotal(packs: readonly Pack[]) {
  return packs.reduce((sum, pack) => sum.plus(lineTotal(pack.count, pack.price)), money(0))
}

function whole(need: number, holds: number, size: string, price: string): Packed {
  const count = Math.ceil(Number((need / holds).toPrecision(12)))
  return { packs: [{ size, count, price: money(price), holds }], bought: count * holds }
}

function lengthsFor(product: Extract<Product, { kind: "length" }>, cutList?: CutList): Packed {
  if (!cutList) throw new Fault(`no saw plan for ${product.id}`)
  const bars = cutList.plan.bars.filter((bar) => !bar.inHand)
  const { spares } = cutList
  const spare = (length: number) => (spares?.length === length ? spares.count : 0)
  const packs = product.lengths
    .map((each) => ({
      size: `${mmText(each.length)} length`,
      count: bars.filter((bar) => bar.stockId === String(each.length)).length + spare(each.length),
      price: money(each.price),
      length: each.length,
      holds: each.length / 1000,
    }))
    .filter((pack) => pack.count > 0)
  const spareRun = spares ? spares.count * spares.length : 0
  return { packs, bought: (bars.reduce((sum, bar) => sum + bar.length, 0) + spareRun) / 1000 }
}
