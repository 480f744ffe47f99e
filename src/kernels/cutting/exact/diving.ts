import type { CuttingModel, Pattern } from "../cutting-model.ts"
import { generateColumns } from "./column-generation.ts"
import type { Effort } from "./effort.ts"
import type { Master, MasterSolution } from "./master.ts"
import type { Pricing } from "./pricing.ts"
import type { Remaining } from "./sequential-values.ts"

/** What a dive asks of the caller: how to finish a rest, and when a plan is good enough. */
export interface Dive {
  /** A plan for what is left, from the prices of the moment; undefined if there is none. */
  finish(left: Remaining, prices: Float64Array): Pattern[] | undefined
  /** The best plan for what is left once that is little. */
  settle(left: Remaining): Promise<Pattern[]>
  /** So few pieces are little. */
  little: number
  /** Stop at a plan that costs no more than this. */
  target: number
  random: () => number
}

/**
 * A plan by diving: take the columns that the linear program uses once or more, else the one it uses most nearly whole; ask the rest
 * of the program again with new columns; at each depth, also finish the rest at once and keep the best plan met.
 * Columns of the master stay; its demand is put back.
 */
export async function divedPlan(
  master: Master,
  model: CuttingModel,
  pricing: Pricing,
  { finish, settle, little, target, random }: Dive,
  effort: Effort,
): Promise<Pattern[] | undefined> {
  const demand = [...model.demand]
  const limits = model.stocks.map((stock) => stock.limit)
  const taken: Pattern[] = []
  let best: Pattern[] | undefined
  let least = Number.POSITIVE_INFINITY
  const offer = (plan: Pattern[]) => {
    const cost = plan.reduce((sum, { stock, times }) => sum + times * (model.stocks[stock]?.cost ?? 0), 0)
    if (cost >= least) return
    least = cost
    best = plan
  }
  while (demand.some((count) => count > 0) && least > target && !effort.exhausted) {
    master.ask(demand, limits)
    const asked = { demand, limits, enough: Number.POSITIVE_INFINITY, rounds: ROUNDS_PER_DEPTH }
    const { solution } = generateColumns(master, model, pricing, asked, effort)
    if (takeWhole(master, solution, demand, limits, taken) === 0)
      takeOne(master, solution, { demand, limits }, taken, random)
    const rest = finish({ demand, limits }, solution.prices)
    if (rest !== undefined) offer([...taken, ...rest])
    const left = demand.reduce((sum, count) => sum + count, 0)
    if (left > little) continue
    if (left > 0) offer([...taken, ...(await settle({ demand, limits }))])
    break
  }
  master.ask(
    model.demand,
    model.stocks.map((stock) => stock.limit),
  )
  return best
}

/** Rounds of column generation at each depth. */
const ROUNDS_PER_DEPTH = 12
/** A use this near above a whole number is that number. */
const NEARLY = 1e-6
/** Spread of the random part when the next column is chosen. */
const SPREAD = 0.3

function takeWhole(
  master: Master,
  solution: MasterSolution,
  demand: number[],
  limits: number[],
  taken: Pattern[],
): number {
  let count = 0
  solution.uses.forEach((use, index) => {
    for (let whole = Math.floor(use + NEARLY); whole > 0; whole--) {
      if (!take(master, index, demand, limits, taken)) break
      count++
    }
  })
  return count
}

function takeOne(
  master: Master,
  solution: MasterSolution,
  left: { demand: number[]; limits: number[] },
  taken: Pattern[],
  random: () => number,
): void {
  const order = Array.from(solution.uses, (use, index) => ({
    index,
    rank: use > NEARLY ? use + SPREAD * random() : 0,
  }))
    .filter(({ rank }) => rank > 0)
    .sort((a, b) => b.rank - a.rank || a.index - b.index)
  for (const { index } of order) if (take(master, index, left.demand, left.limits, taken)) return
}

/** Takes a column once, less the pieces no longer wanted; false if it would bring nothing. */
function take(master: Master, index: number, demand: number[], limits: number[], taken: Pattern[]): boolean {
  const column = master.columns[index]
  if (column === undefined || (limits[column.stock] as number) <= 0) return false
  const counts = column.counts.map((count, type) => Math.min(count, demand[type] as number))
  if (counts.every((count) => count === 0)) return false
  counts.forEach((count, type) => {
    demand[type] = (demand[type] as number) - count
  })
  limits[column.stock] = (limits[column.stock] as number) - 1
  taken.push({ stock: column.stock, counts, times: 1 })
  return true
}
