import { Fault } from "../fault.ts"
import type { CutBar, CutPlan, CuttingProblem } from "./problem.ts"

/**
 * Checks a plan against its problem, rule by rule, sharing nothing with the search: every piece once, no bar overfull, no stock
 * overdrawn, lengths that add up, totals, bound and proof that agree.
 * @throws Fault naming the first rule that is broken
 */
export function verifyCutPlan(problem: CuttingProblem, plan: CutPlan): void {
  const lengths = new Map<string, number>()
  for (const { id, length } of problem.items) {
    hold(!lengths.has(id) || lengths.get(id) === length, `item ${id} has one length`)
    lengths.set(id, length)
  }
  for (const [index, bar] of plan.bars.entries()) checkBar(problem, bar, index, lengths)
  checkCounts(problem, plan)
  checkStock(problem, plan)
  checkTotals(plan)
  checkUnplaced(problem, plan)
}

/** Lengths agree to well within a tenth of a millimetre. */
const EQUAL = 1e-6

function hold(holds: boolean, what: string): void {
  if (!holds) throw new Fault(`cut plan: ${what}`)
}

function near(a: number, b: number): boolean {
  return Math.abs(a - b) < EQUAL
}

function checkBar(problem: CuttingProblem, bar: CutBar, index: number, lengths: Map<string, number>): void {
  const where = `bar ${index + 1} (${bar.stockId})`
  const source = bar.inHand
    ? problem.offcutsInHand?.find(({ id }) => id === bar.stockId)
    : problem.stocks.find(({ id }) => id === bar.stockId)
  hold(source !== undefined && near(source.length, bar.length), `${where} is a stock of the problem`)
  hold(
    bar.cost === (bar.inHand ? 0 : problem.stocks.find(({ id }) => id === bar.stockId)?.cost),
    `${where} has its stock's cost`,
  )
  hold(bar.pieces.length > 0, `${where} has a piece`)
  let used = 0
  for (const piece of bar.pieces) {
    const length = lengths.get(piece)
    hold(length !== undefined, `${where} holds only pieces of the problem`)
    used += length ?? 0
  }
  const trims = bar.inHand ? 0 : 2 * (problem.endTrim ?? 0)
  hold(near(2 * bar.endTrim, trims), `${where} is squared at both factory ends`)
  const between = problem.kerf * (bar.pieces.length - 1)
  hold(used + between + trims <= bar.length + EQUAL, `${where} is not overfull`)
  hold(
    near(used + bar.kerfs + trims + bar.offcut, bar.length),
    `${where}: trims, pieces, kerfs and offcut make its length`,
  )
  hold(
    bar.offcut >= 0 && bar.kerfs >= between - EQUAL,
    `${where} has no negative offcut and a kerf between neighbours`,
  )
  const cuts = bar.offcut > EQUAL ? bar.pieces.length : bar.pieces.length - 1
  hold(bar.kerfs >= problem.kerf * cuts - EQUAL, `${where} loses a kerf at each cut`)
  hold(
    bar.kerfs <= problem.kerf * bar.pieces.length + EQUAL,
    `${where} loses no more than a kerf at each cut`,
  )
  hold(
    bar.keep === (bar.offcut > 0 && bar.offcut >= (problem.keepFrom ?? 0)),
    `${where} keeps its offcut if long enough`,
  )
}

function checkCounts(problem: CuttingProblem, plan: CutPlan): void {
  const open = new Map<string, number>()
  const change = (id: string, by: number) => open.set(id, (open.get(id) ?? 0) + by)
  for (const { id, count } of problem.items) change(id, count)
  for (const bar of plan.bars) for (const piece of bar.pieces) change(piece, -1)
  for (const { itemId, count } of plan.unplaced) change(itemId, -count)
  for (const [id, count] of open) hold(count === 0, `item ${id} is cut as often as wanted (${count} open)`)
}

function checkStock(problem: CuttingProblem, plan: CutPlan): void {
  for (const [inHand, stocks] of [
    [false, problem.stocks],
    [true, problem.offcutsInHand ?? []],
  ] as const) {
    for (const id of new Set(stocks.map((stock) => stock.id))) {
      const taken = plan.bars.filter((bar) => bar.inHand === inHand && bar.stockId === id).length
      const there = stocks
        .filter((stock) => stock.id === id)
        .reduce((sum, stock) => sum + (stock.available ?? Number.POSITIVE_INFINITY), 0)
      hold(taken <= there, `stock ${id} is not overdrawn`)
    }
  }
}

function checkTotals(plan: CutPlan): void {
  const bought = plan.bars.filter((bar) => !bar.inHand)
  hold(plan.lengths === bought.length, "bought lengths are counted")
  hold(
    near(
      plan.cost,
      bought.reduce((sum, bar) => sum + bar.cost, 0),
    ),
    "the cost is the sum of the bars",
  )
  hold(plan.bound <= plan.cost, "the bound is not above the cost")
  hold(!plan.proven || plan.bound === plan.cost, "proven only where bound and cost meet")
  hold(!plan.fewestProven || plan.proven, "fewest lengths are proven only where the cost is")
}

function checkUnplaced(problem: CuttingProblem, plan: CutPlan): void {
  const rooms = [
    ...problem.stocks.map((stock) => stock.length - 2 * (problem.endTrim ?? 0)),
    ...(problem.offcutsInHand ?? []).map((offcut) => offcut.length),
  ]
  const longest = Math.max(0, ...rooms)
  for (const { itemId, length, reason } of plan.unplaced) {
    hold(
      problem.items.some((item) => item.id === itemId && item.length === length),
      `unplaced ${itemId} is an item of the problem`,
    )
    hold(
      reason !== "longer-than-any-stock" || length > longest,
      `unplaced ${itemId} is longer than any stock`,
    )
    hold(reason !== "stock-run-out" || length <= longest + EQUAL, `unplaced ${itemId} would fit a stock`)
  }
}
