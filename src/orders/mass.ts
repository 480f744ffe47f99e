import type { Product } from "../intake/schema/products.ts"
import type { Kilograms, Mm } from "../kernels/units.ts"
import { mmText, roundHalfUp } from "../kernels/units.ts"
import type { Rules } from "../rulebook/rules.ts"
import type { JobFacts } from "../trades/trade.ts"
import type { Pack } from "./orders.ts"

const cubicMillimetres = 1e9

/** Mass of the heaviest pack and of all packs of a line; null where the product states none. */
export function massesOf(
  product: Product,
  packs: readonly Pack[],
  rules: Rules,
): { packMass: Kilograms | null; mass: Kilograms | null } {
  const each = packs.map((pack) => onePack(product, pack, rules))
  if (each.some((mass) => mass === null)) return { packMass: null, mass: null }
  const masses = each as number[]
  return {
    packMass: Math.max(0, ...masses),
    mass: masses.reduce((sum, mass, index) => sum + mass * packs[index]!.count, 0),
  }
}

function onePack(product: Product, pack: Pack, rules: Rules): number | null {
  switch (product.kind) {
    case "board":
      return product.packMass
    case "roll":
    case "leaf":
      return product.mass
    case "tile":
      return product.boxMass
    case "each":
      return product.mass ?? null
    case "liquid":
      return (pack.holds ?? 0) * rules.value("mass-of-paint")
    case "length": {
      const volume = (product.thickness * product.width * (pack.length ?? 0)) / cubicMillimetres
      return volume * rules.value(`saw-density-${product.material}`)
    }
  }
}

/** The longest side of what is carried, mm; 0 where that does not matter. */
export function longestSide(product: Product): Mm {
  if (product.kind === "length") return Math.max(...product.lengths.map((each) => each.length))
  if (product.kind === "board") return product.length
  if (product.kind === "leaf") return product.height
  return 0
}

/** What to mind on the stair: a length over the longest that goes up, a pack heavier than one person lifts. */
export function carryNote(longest: Mm, packMass: Kilograms | null, { carry }: JobFacts): string | null {
  if (longest > carry.longest)
    return `${mmText(longest)} long: cut below, or to no more than ${mmText(carry.longest)}`
  if (packMass !== null && packMass > carry.heaviest) return `${roundHalfUp(packMass, 1)} kg: two people`
  return null
}
