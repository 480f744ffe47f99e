import { Fault } from "./fault.ts"
import { type Money, money, nothing } from "./money.ts"
import type { Litres } from "./units.ts"

/** A size sold. */
export interface Tin {
  litres: Litres
  /** Price of one, as text. */
  price: string
}

/** Whole tins for a need. */
export interface TinChoice {
  /** How many of each size, largest first; sizes not taken are left out. */
  tins: { litres: Litres; count: number }[]
  /** What they hold together, and how much of it is over. */
  litres: Litres
  over: Litres
  cost: Money
  /** Always true: the search is exact. */
  proven: true
}

interface Best {
  cost: number
  count: number
  last: number
}

/** Litres are weighed in millilitres, prices in the finest quoted part of a penny, so that sums are whole numbers. */
const perLitre = 1000
const perPound = 10_000

/**
 * Whole tins that hold at least a need at least cost; among equals the least left over, then the fewest tins.
 * Exact: the cheapest way to every volume from nought to the need and less than one largest tin beyond it, since a choice
 * from which a tin could be taken away is never the best.
 * @param need litres; rounded up to the next millilitre, so that it never falls short; nought or less needs no tin
 * @param tins sizes sold, each any number of times; at least one
 */
export function leastCostTins(need: Litres, tins: readonly Tin[]): TinChoice {
  if (tins.length === 0) throw new Fault("no tin size to choose from")
  const sizes = tins.map((tin) => Math.max(1, Math.round(tin.litres * perLitre)))
  const prices = tins.map((tin) => money(tin.price).times(perPound).toNumber())
  const wanted = Math.max(0, Math.ceil(Number((need * perLitre).toPrecision(12))))
  const grain = sizes.reduce(commonDivisor)
  const best = cheapest(
    Math.ceil(wanted / grain),
    sizes.map((size) => size / grain),
    prices,
  )
  const reached = bestFrom(best, Math.ceil(wanted / grain))
  const counts = countsOf(best, reached, sizes, grain)
  const litres = (reached * grain) / perLitre
  return {
    tins: tins
      .map((tin, index) => ({ litres: tin.litres, count: counts[index]! }))
      .filter((row) => row.count > 0)
      .sort((a, b) => b.litres - a.litres),
    litres,
    over: (reached * grain - wanted) / perLitre,
    cost: tins.reduce((sum, tin, index) => sum.plus(money(tin.price).times(counts[index]!)), nothing),
    proven: true,
  }
}

/** Cheapest exact filling of each volume (in grains) up to the need and one largest tin; undefined where none fits exactly. */
function cheapest(need: number, sizes: number[], prices: number[]): (Best | undefined)[] {
  const best: (Best | undefined)[] = [{ cost: 0, count: 0, last: -1 }]
  for (let volume = 1; volume < need + Math.max(...sizes); volume++) {
    sizes.forEach((size, last) => {
      const before = volume >= size ? best[volume - size] : undefined
      if (!before) return
      const next = { cost: before.cost + prices[last]!, count: before.count + 1, last }
      if (isBetter(next, best[volume])) best[volume] = next
    })
  }
  return best
}

function isBetter(a: Best, b: Best | undefined): boolean {
  return !b || a.cost < b.cost || (a.cost === b.cost && a.count < b.count)
}

function bestFrom(best: (Best | undefined)[], need: number): number {
  let found: number | undefined
  for (let volume = need; volume < best.length; volume++) {
    const here = best[volume]
    if (here && (found === undefined || here.cost < best[found]!.cost)) found = volume
  }
  if (found === undefined) throw new Fault("no filling reaches the need")
  return found
}

function countsOf(best: (Best | undefined)[], reached: number, sizes: number[], grain: number): number[] {
  const counts = sizes.map(() => 0)
  for (let volume = reached; volume > 0; ) {
    const { last } = best[volume]!
    counts[last]!++
    volume -= sizes[last]! / grain
  }
  return counts
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b)
}
