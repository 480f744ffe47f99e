import type { CuttingModel, Pattern } from "../cutting-model.ts"
import type { Effort } from "./effort.ts"
import type { Pricing } from "./pricing.ts"

/** What is still to be cut, and from how many of each stock. */
export interface Remaining {
  demand: readonly number[]
  limits: readonly number[]
}

/** How the rounds are run. */
export interface SequentialRounds {
  /** First worth of each width, in units of cost. */
  worth: ArrayLike<number>
  rounds: number
  /** Stop at a plan that costs no more than this. */
  target: number
  random: () => number
}

/**
 * Plans filled bar by bar, each bar the most valuable that the pieces left allow; then the worth of what ended in wasteful bars is
 * raised, so that the next round places it sooner. After G. Belov, G. Scheithauer, sequential value correction (2007; from memory).
 * @returns the cheapest plan found, or undefined if the pieces fit no stock left
 */
export function sequentialPlan(
  model: CuttingModel,
  pricing: Pricing,
  left: Remaining,
  { worth, rounds, target, random }: SequentialRounds,
  effort: Effort,
): Pattern[] | undefined {
  const values = Array.from(
    { length: model.widths.length },
    (_, type) => (worth[type] as number) + LEAST_WORTH * (model.widths[type] as number),
  )
  let best: Pattern[] | undefined
  let least = Number.POSITIVE_INFINITY
  for (let round = 0; round < rounds && least > target && !effort.exhausted; round++) {
    const plan = onePlan(model, pricing, left, values)
    if (plan === undefined) return best
    const cost = plan.reduce((sum, { stock, times }) => sum + times * (model.stocks[stock]?.cost ?? 0), 0)
    if (cost < least) {
      least = cost
      best = plan
    }
    correct(model, left.demand, values, plan, random)
  }
  return best
}

/** Whole-number value of one unit of worth, for exact tables. */
const VALUE_SCALE = 2 ** 30
/** Steps of the search for one bar, all stocks together. */
const STEPS_PER_BAR = 3_000
/** Keeps every piece worth something. */
const LEAST_WORTH = 1e-9
/** Greatest power by which wide pieces are worth more for their width. */
const STEEPEST = 0.06

function onePlan(
  model: CuttingModel,
  pricing: Pricing,
  left: Remaining,
  values: readonly number[],
): Pattern[] | undefined {
  const demand = [...left.demand]
  const limits = [...left.limits]
  const whole = wholeValues(values)
  const plan: Pattern[] = []
  while (demand.some((count) => count > 0)) {
    pricing.quick(whole, demand, Math.ceil(STEPS_PER_BAR / model.stocks.length))
    const stock = stockFor(model, pricing, demand, limits)
    if (stock < 0) return undefined
    const counts = [...pricing.counts(stock)]
    let times = limits[stock] as number
    counts.forEach((count, type) => {
      if (count > 0) times = Math.min(times, Math.floor((demand[type] as number) / count))
    })
    counts.forEach((count, type) => {
      demand[type] = (demand[type] as number) - count * times
    })
    limits[stock] = (limits[stock] as number) - times
    plan.push({ stock, counts, times })
  }
  return plan
}

/** The cheapest stock that takes all that is left; else the one that gives most value for its cost; stock that costs nothing first. */
function stockFor(
  model: CuttingModel,
  pricing: Pricing,
  demand: readonly number[],
  limits: readonly number[],
): number {
  const wanted = demand.reduce((sum, count, type) => sum + count * (model.widths[type] as number), 0)
  let best = -1
  let rate = 0
  let closing = -1
  model.stocks.forEach(({ capacity, cost }, stock) => {
    const value = pricing.value(stock)
    if ((limits[stock] as number) <= 0 || value <= 0) return
    if (capacity >= wanted && (closing < 0 || cost < (model.stocks[closing]?.cost ?? 0))) closing = stock
    const given = cost === 0 ? Number.POSITIVE_INFINITY : value / cost
    if (given > rate) {
      best = stock
      rate = given
    }
  })
  return closing >= 0 ? closing : best
}

function wholeValues(values: readonly number[]): number[] {
  const greatest = Math.max(...values)
  return values.map((value) => Math.max(1, Math.round((value / greatest) * VALUE_SCALE)))
}

/** New worth: half the old, half the width's share of the cost of the bars it came to lie in, waste included. */
function correct(
  model: CuttingModel,
  demand: readonly number[],
  values: number[],
  plan: readonly Pattern[],
  random: () => number,
): void {
  const power = 1 + STEEPEST * random()
  const widest = model.widths[0] as number
  for (const { stock, counts, times } of plan) {
    const used = counts.reduce((sum, count, type) => sum + count * (model.widths[type] as number), 0)
    const { cost, capacity } = model.stocks[stock] as { cost: number; capacity: number }
    const rate = ((Math.max(cost, 1) * widest) / capacity) * (capacity / used) ** 2
    counts.forEach((count, type) => {
      if (count === 0) return
      const share = (count * times) / (2 * (demand[type] as number))
      const fresh = rate * ((model.widths[type] as number) / widest) ** power
      values[type] = (1 - share) * (values[type] as number) + share * fresh * jitter(random)
    })
  }
}

function jitter(random: () => number): number {
  return 1 + JITTER * (random() - 0.5)
}

/** Spread of the worth's random part. */
const JITTER = 0.04
