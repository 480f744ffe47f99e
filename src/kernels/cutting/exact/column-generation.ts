import type { CuttingModel } from "../cutting-model.ts"
import type { Effort } from "./effort.ts"
import type { Master, MasterSolution } from "./master.ts"
import type { Pricing } from "./pricing.ts"

/** Prices in whole numbers, and the bound that they prove: no plan costs less, whatever rounding the linear program did. */
export interface ProvedPrices {
  bound: number
  /** Prices of the widths, never rising as widths fall; `scale` of them are one unit of cost. */
  prices: Float64Array
  scale: number
  /** Whole-number charge for each bar of a limited stock, 0 or more. */
  charges: number[]
}

/** What column generation ends with. */
export interface Generated {
  solution: MasterSolution
  proved: ProvedPrices
}

/** What column generation works for: the pieces still wanted, stock left, and when to stop. */
export interface Asked {
  demand: readonly number[]
  limits: readonly number[]
  /** Stop as soon as the bound is above this. */
  enough: number
  rounds: number
  /** Also take patterns that begin with each width, while some of those save. */
  led?: boolean
}

/**
 * Columns priced by the bounded knapsack until none improves, the bound is enough or the rounds are over.
 * Each round takes the best pattern of each stock, then patterns of the pieces that those leave, so that columns go together.
 */
export function generateColumns(
  master: Master,
  model: CuttingModel,
  pricing: Pricing,
  asked: Asked,
  effort: Effort,
): Generated {
  const scale = priceScale(model)
  let best: ProvedPrices | undefined
  for (let round = 1; ; round++) {
    const solution = master.solve(effort)
    const prices = fallingWholePrices(solution.prices, scale)
    const priced = { ...solution, prices }
    if (asked.led === true && addLed(master, model, pricing, priced, scale, asked)) {
      const proved = provedPrices(model, pricing, prices, scale, asked)
      if (best === undefined || proved.bound > best.bound) best = proved
      if (best.bound <= asked.enough && round < asked.rounds && !effort.exhausted) continue
    }
    pricing.quick(prices, asked.demand)
    if (!pricing.exact && !anySaving(model, pricing, priced, scale, asked))
      pricing.solve(prices, asked.demand)
    if (pricing.exact) {
      const proved = provedPrices(model, pricing, prices, scale, asked)
      if (best === undefined || proved.bound > best.bound) best = proved
    }
    const over = (best?.bound ?? 0) > asked.enough || round >= asked.rounds || effort.exhausted
    if (over || addColumns(master, model, pricing, priced, scale, asked) === 0)
      return { solution, proved: best ?? nothingProved(model, scale) }
  }
}

/** Least whole cost that a bound in fractions allows. */
export function wholeBound(bound: number): number {
  return Math.max(0, Math.ceil(bound - ROUNDING))
}

/** A power of two, so large that prices in whole numbers lose nothing that matters and sums stay exact. */
export function priceScale(model: CuttingModel): number {
  const pieces = model.demand.reduce((sum, count) => sum + count, 0)
  const dearest = Math.max(1, ...model.stocks.map((stock) => stock.cost))
  return 2 ** Math.max(0, Math.min(SCALE_BITS, EXACT_BITS - Math.ceil(Math.log2((pieces + 1) * dearest * 2))))
}

/** Allowance for the few divisions in a bound; all else in it is exact. */
const ROUNDING = 1e-7
/** Bits of a price below one unit of cost. */
const SCALE_BITS = 30
/** Whole numbers up to this many bits are exact. */
const EXACT_BITS = 52
/** A search for a filling may miss a part in 10^12 of its value. */
const SLACK = 1 + 4e-12
/** Patterns taken in one round after the first. */
const COMPANIONS = 8
/** A column must save more than this share of a unit of cost. */
const LEAST_SAVING = 1e-7

/** Whole-number prices, each raised to the greatest of the narrower ones': a wide place is worth as much as a narrow one. */
function fallingWholePrices(prices: Float64Array, scale: number): Float64Array {
  const whole = prices.map((price) => Math.floor(price * scale))
  for (let type = whole.length - 2; type >= 0; type--)
    whole[type] = Math.max(whole[type] as number, whole[type + 1] as number)
  return whole
}

/**
 * Lagrange's bound: prices shrunk until no endless stock can hold more than it costs; each bar of a limited stock that still can is
 * charged the difference.
 */
function provedPrices(
  model: CuttingModel,
  pricing: Pricing,
  prices: Float64Array,
  scale: number,
  asked: Asked,
): ProvedPrices {
  let shrink = 1
  model.stocks.forEach((stock, index) => {
    if (asked.limits[index] === Number.POSITIVE_INFINITY) {
      shrink = Math.max(shrink, (pricing.value(index) * SLACK) / (stock.cost * scale))
    }
  })
  if (!Number.isFinite(shrink))
    return { bound: 0, prices: prices.map(() => 0), scale, charges: model.stocks.map(() => 0) }
  const charges = model.stocks.map((stock, index) => {
    const over = (pricing.value(index) * SLACK) / shrink - stock.cost * scale
    return asked.limits[index] === Number.POSITIVE_INFINITY ? 0 : Math.max(0, over)
  })
  const wanted = asked.demand.reduce((sum, count, type) => sum + count * (prices[type] as number), 0)
  const charged = charges.reduce(
    (sum, charge, index) => sum + (charge > 0 ? charge * (asked.limits[index] as number) : 0),
    0,
  )
  return {
    bound: (wanted / shrink - charged) / scale,
    prices: prices.map((price) => price / shrink),
    scale,
    charges,
  }
}

function nothingProved(model: CuttingModel, scale: number): ProvedPrices {
  return {
    bound: 0,
    prices: new Float64Array(model.widths.length),
    scale,
    charges: model.stocks.map(() => 0),
  }
}

/** Adds the best pattern that begins with each width; false if none saves, or the table for it is too large. */
function addLed(
  master: Master,
  model: CuttingModel,
  pricing: Pricing,
  { prices, stockPrices }: Priced,
  scale: number,
  { demand, limits }: Asked,
): boolean {
  const saving = (value: number, stock: number) =>
    (limits[stock] as number) > 0
      ? value / scale - (model.stocks[stock]?.cost ?? 0) + (stockPrices[stock] as number)
      : 0
  const led = pricing.led(prices, demand, saving) ?? []
  const worth = led.filter((found) => found.saving > LEAST_SAVING).sort((a, b) => b.saving - a.saving)
  let added = 0
  for (const { stock, counts } of worth.slice(0, LED_AT_ONCE)) if (master.add({ stock, counts })) added++
  return added > 0
}

/** Patterns of that kind taken in one round. */
const LED_AT_ONCE = 100

type Priced = Pick<MasterSolution, "prices" | "stockPrices">

/** What the filling of each stock saves against its cost, in units of cost. */
function savings(
  model: CuttingModel,
  pricing: Pricing,
  priced: Priced,
  scale: number,
  asked: Asked,
): number[] {
  return model.stocks.map(({ cost }, stock) =>
    (asked.limits[stock] as number) > 0
      ? pricing.value(stock) / scale - cost + (priced.stockPrices[stock] as number)
      : 0,
  )
}

function anySaving(
  model: CuttingModel,
  pricing: Pricing,
  priced: Priced,
  scale: number,
  asked: Asked,
): boolean {
  return savings(model, pricing, priced, scale, asked).some((saving) => saving > LEAST_SAVING)
}

function addColumns(
  master: Master,
  model: CuttingModel,
  pricing: Pricing,
  priced: Priced,
  scale: number,
  asked: Asked,
): number {
  const left = [...asked.demand]
  let added = 0
  for (let turn = 0; turn <= COMPANIONS; turn++) {
    if (turn > 0) pricing.quick(priced.prices, left)
    const saved = savings(model, pricing, priced, scale, asked)
    const worth = saved.flatMap((value, stock) => (value > LEAST_SAVING ? [stock] : []))
    if (worth.length === 0) break
    const best = worth.reduce((a, b) => ((saved[b] as number) > (saved[a] as number) ? b : a))
    for (const stock of turn === 0 ? worth : [best])
      if (master.add({ stock, counts: pricing.counts(stock) })) added++
    pricing.counts(best).forEach((count, type) => {
      left[type] = (left[type] as number) - count
    })
  }
  return added
}
