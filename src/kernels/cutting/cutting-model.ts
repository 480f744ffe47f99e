import { invariant } from "../fault.ts"
import type { CuttingItem, CuttingProblem, Unplaced } from "./problem.ts"

/** A stock of the model: capacity in units with trims off and one kerf on, cost in units of the common divisor. */
export interface ModelStock {
  /** Index into `stocks`, then `offcutsInHand`, of the problem; -1 for the stand-in of missing lengths. */
  source: number
  capacity: number
  cost: number
  /** How many there are; `Infinity` if no limit. */
  limit: number
}

/**
 * The problem in whole numbers: each piece has one kerf added, and so has each length, which is the same as a kerf between
 * neighbours: sum(p) + kerf (n - 1) <= L is sum(p + kerf) <= L + kerf.
 */
export interface CuttingModel {
  /** Distinct widths, strictly falling. */
  widths: number[]
  /** Pieces wanted of each width. */
  demand: number[]
  /** Item ids of each width, one for each piece. */
  ids: string[][]
  /** Longest first; of equal capacity the cheapest first. */
  stocks: ModelStock[]
  /** Cost units in one unit of the model. */
  divisor: number
  /** Cost, in the model, of one missing length; 0 if none can be missing. */
  missingCost: number
}

/** Pieces of one bar: how many of each width, from which stock of the model, and how many such bars. */
export interface Pattern {
  stock: number
  counts: number[]
  times: number
}

/** Tenths of a millimetre in a millimetre: the saw works no finer. */
const TENTHS = 10
/** How far from a whole tenth binary noise may put a length. */
const NOISE = 1e-6

/**
 * The problem in whole numbers, and the pieces longer than any stock set aside.
 * Where every stock is limited, a stand-in stock of the greatest length, dearer than all else together, takes what finds no place.
 * A negative or broken length, count, cost or kerf is a Fault.
 */
export function cuttingModel(problem: CuttingProblem): { model: CuttingModel; tooLong: Unplaced[] } {
  const kerf = tenths(problem.kerf, "kerf")
  const stocks = modelStocks(problem, kerf)
  const longest = Math.max(0, ...stocks.map((stock) => stock.capacity))
  const fits = (item: CuttingItem) => tenths(item.length, `length of item ${item.id}`) + kerf <= longest
  for (const item of problem.items) checkItem(item)
  const wanted = problem.items.filter((item) => item.count > 0)
  const tooLong = wanted.filter((item) => !fits(item)).map((item) => unplaced(item))
  const { widths, ids } = byWidth(wanted.filter(fits), kerf)
  const shortest = widths.at(-1) ?? 0
  const useful = stocks.filter((stock) => stock.capacity >= shortest && stock.limit > 0)
  const model = scaled({ widths, ids, stocks: useful, longest })
  return { model, tooLong }
}

/** Greatest common divisor of whole numbers. */
export function greatestCommonDivisor(a: number, b: number): number {
  let [x, y] = [a, b]
  while (y > 0) [x, y] = [y, x % y]
  return x
}

/** Total width wanted. */
export function totalWidth(model: CuttingModel): number {
  return model.widths.reduce((sum, width, type) => sum + width * (model.demand[type] ?? 0), 0)
}

/** Total cost of patterns in model units. */
export function patternCost(model: CuttingModel, patterns: readonly Pattern[]): number {
  return patterns.reduce((sum, { stock, times }) => sum + times * (model.stocks[stock]?.cost ?? 0), 0)
}

function modelStocks(problem: CuttingProblem, kerf: number): ModelStock[] {
  const trim = 2 * tenths(problem.endTrim ?? 0, "end trim")
  const bought = problem.stocks.map((stock, source) => {
    invariant(
      Number.isSafeInteger(stock.cost) && stock.cost >= 0,
      `cutting: cost of stock ${stock.id} is a whole number`,
    )
    const limit = stock.available ?? Number.POSITIVE_INFINITY
    return {
      source,
      capacity: tenths(stock.length, `length of stock ${stock.id}`) - trim + kerf,
      cost: stock.cost,
      limit,
    }
  })
  const inHand = (problem.offcutsInHand ?? []).map((offcut, index) => {
    const capacity = tenths(offcut.length, `length of offcut ${offcut.id}`) + kerf
    return { source: problem.stocks.length + index, capacity, cost: 0, limit: offcut.available }
  })
  const stocks = [...bought, ...inHand]
  for (const { limit } of stocks) {
    invariant(
      limit === Number.POSITIVE_INFINITY || (Number.isSafeInteger(limit) && limit >= 0),
      "cutting: a stock's limit is a count",
    )
  }
  return stocks
    .filter((stock) => stock.capacity > kerf)
    .sort((a, b) => b.capacity - a.capacity || a.cost - b.cost || a.source - b.source)
}

interface Unscaled {
  widths: number[]
  ids: string[][]
  stocks: ModelStock[]
  longest: number
}

function scaled({ widths, ids, stocks, longest }: Unscaled): CuttingModel {
  const demand = ids.map((list) => list.length)
  const unit = widths.reduce(greatestCommonDivisor, 0) || 1
  const pieces = demand.reduce((sum, count) => sum + count, 0)
  const capped = stocks.map((stock) => ({
    ...stock,
    limit: stock.limit >= pieces ? Number.POSITIVE_INFINITY : stock.limit,
  }))
  const kept = capped.filter(
    (stock, index) => !capped.some((other, at) => at !== index && replaces(other, stock, at < index)),
  )
  const divisor = kept.reduce((common, stock) => greatestCommonDivisor(common, stock.cost), 0) || 1
  const inUnits = kept.map((stock) => ({
    ...stock,
    capacity: Math.floor(stock.capacity / unit),
    cost: stock.cost / divisor,
  }))
  const endless = inUnits.some(
    (stock) => stock.limit === Number.POSITIVE_INFINITY && stock.capacity >= (widths[0] ?? 0) / unit,
  )
  const model = {
    widths: widths.map((width) => width / unit),
    demand,
    ids,
    stocks: inUnits,
    divisor,
    missingCost: 0,
  }
  return endless || widths.length === 0 ? model : withMissing(model, Math.floor(longest / unit))
}

/** A limited stock at 0 may be as good as endless, but only bought stock of no limit makes another one useless. */
function replaces(other: ModelStock, stock: ModelStock, first: boolean): boolean {
  if (other.limit !== Number.POSITIVE_INFINITY || other.capacity < stock.capacity || other.cost > stock.cost)
    return false
  return other.capacity > stock.capacity || other.cost < stock.cost || first
}

function withMissing(model: CuttingModel, capacity: number): CuttingModel {
  const pieces = model.demand.reduce((sum, count) => sum + count, 0)
  const spent = model.stocks.reduce((sum, { cost, limit }) => sum + cost * Math.min(limit, pieces), 0)
  const missing = { source: -1, capacity, cost: spent + 1, limit: Number.POSITIVE_INFINITY }
  return { ...model, stocks: [...model.stocks, missing], missingCost: spent + 1 }
}

function byWidth(items: readonly CuttingItem[], kerf: number): { widths: number[]; ids: string[][] } {
  const groups = new Map<number, string[]>()
  for (const item of items) {
    const width = tenths(item.length, `length of item ${item.id}`) + kerf
    const list = groups.get(width) ?? []
    for (let piece = 0; piece < item.count; piece++) list.push(item.id)
    groups.set(width, list)
  }
  const widths = [...groups.keys()].sort((a, b) => b - a)
  return { widths, ids: widths.map((width) => groups.get(width) ?? []) }
}

function checkItem(item: CuttingItem): void {
  invariant(item.length > 0, `cutting: length of item ${item.id} is above 0`)
  invariant(
    Number.isSafeInteger(item.count) && item.count >= 0,
    `cutting: count of item ${item.id} is a whole number`,
  )
}

function unplaced(item: CuttingItem): Unplaced {
  return { itemId: item.id, length: item.length, count: item.count, reason: "longer-than-any-stock" }
}

function tenths(length: number, what: string): number {
  const units = Math.round(length * TENTHS)
  invariant(
    length >= 0 && Math.abs(length * TENTHS - units) < NOISE,
    `cutting: ${what} is in whole tenths of a millimetre (${length})`,
  )
  return units
}
