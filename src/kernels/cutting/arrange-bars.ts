import { invariant } from "../fault.ts"
import type { CuttingModel, ModelStock, Pattern } from "./cutting-model.ts"
import type { CutBar, CuttingProblem, Unplaced } from "./problem.ts"

/** A bar as widths of the model, before it gets names and millimetres. */
export interface FilledBar {
  stock: number
  /** Width indices, widest first. */
  types: number[]
}

/** Whole numbers of the model per millimetre are gone here: bars in millimetres, with pieces by name. */
export interface ArrangedBars {
  bars: CutBar[]
  unplaced: Unplaced[]
}

/**
 * The pieces wanted, put into the places that the patterns give: the widest piece into the widest place, and so on down. A place
 * may be wider than its piece; places left over are dropped, and bars without a piece with them.
 */
export function filledBars(model: CuttingModel, patterns: readonly Pattern[]): FilledBar[] {
  const bars: FilledBar[] = []
  const places: { bar: FilledBar; type: number }[] = []
  for (const { stock, counts, times } of patterns) {
    for (let turn = 0; turn < times; turn++) {
      const bar: FilledBar = { stock, types: [] }
      bars.push(bar)
      counts.forEach((count, type) => {
        for (let piece = 0; piece < count; piece++) places.push({ bar, type })
      })
    }
  }
  places.sort((a, b) => a.type - b.type)
  let next = 0
  model.demand.forEach((count, type) => {
    for (let piece = 0; piece < count; piece++) {
      const place = places[next++]
      invariant(place !== undefined && place.type <= type, "cutting: every piece has a place wide enough")
      place.bar.types.push(type)
    }
  })
  return bars.filter((bar) => bar.types.length > 0)
}

/**
 * Bars in millimetres: offcuts in hand first, then bought lengths, longest first, equal bars together; what lies in missing lengths
 * is unplaced because stock ran out.
 */
export function arrangedBars(
  problem: CuttingProblem,
  model: CuttingModel,
  filled: readonly FilledBar[],
): ArrangedBars {
  const names = model.ids.map((ids) => [...ids])
  const missing = (bar: FilledBar) => (model.stocks[bar.stock] as ModelStock).source < 0
  const placed = filled.filter((bar) => !missing(bar)).sort((a, b) => sawOrder(problem, model, a, b))
  const bars = placed.map((bar) => cutBar(problem, model, bar, names))
  const counts = new Map<string, number>()
  for (const type of filled.filter(missing).flatMap((bar) => bar.types)) {
    const id = names[type]?.shift() as string
    counts.set(id, (counts.get(id) ?? 0) + 1)
  }
  const lengths = new Map(problem.items.map((item) => [item.id, item.length]))
  const unplaced = [...counts].map(([itemId, count]) => ({
    itemId,
    length: lengths.get(itemId) ?? 0,
    count,
    reason: "stock-run-out" as const,
  }))
  return { bars, unplaced }
}

/** Whole tenths, so that sums of lengths stay exact. */
const TENTHS = 10

function sawOrder(problem: CuttingProblem, model: CuttingModel, a: FilledBar, b: FilledBar): number {
  const [first, second] = [
    (model.stocks[a.stock] as ModelStock).source,
    (model.stocks[b.stock] as ModelStock).source,
  ]
  const bought = problem.stocks.length
  if (first >= bought !== second >= bought) return first >= bought ? -1 : 1
  return a.stock - b.stock || compareTypes(a.types, b.types)
}

function compareTypes(a: readonly number[], b: readonly number[]): number {
  for (let at = 0; at < Math.min(a.length, b.length); at++) {
    const difference = (a[at] as number) - (b[at] as number)
    if (difference !== 0) return difference
  }
  return b.length - a.length
}

function cutBar(problem: CuttingProblem, model: CuttingModel, bar: FilledBar, names: string[][]): CutBar {
  const { source } = model.stocks[bar.stock] as ModelStock
  const stock = problem.stocks[source]
  const offcut = problem.offcutsInHand?.[source - problem.stocks.length]
  const length = stock?.length ?? offcut?.length ?? 0
  const pieces = bar.types.map((type) => names[type]?.shift() as string)
  const lengths = new Map(problem.items.map((item) => [item.id, item.length]))
  const endTrim = stock === undefined ? 0 : (problem.endTrim ?? 0)
  const kerf = tenths(problem.kerf)
  const used = pieces.reduce((sum, id) => sum + tenths(lengths.get(id) ?? 0), 0)
  const between = kerf * (pieces.length - 1)
  const rest = tenths(length) - 2 * tenths(endTrim) - used - between
  const last = Math.min(kerf, rest)
  const left = (rest - last) / TENTHS
  return {
    stockId: stock?.id ?? offcut?.id ?? "",
    length,
    cost: stock?.cost ?? 0,
    inHand: stock === undefined,
    pieces,
    kerfs: (between + last) / TENTHS,
    endTrim,
    offcut: left,
    keep: left > 0 && left >= (problem.keepFrom ?? 0),
  }
}

function tenths(length: number): number {
  return Math.round(length * TENTHS)
}
