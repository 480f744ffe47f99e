import type { ModelData } from "highs"
import type { CuttingModel } from "../cutting-model.ts"
import { totalWidth } from "../cutting-model.ts"
import { solver } from "./master.ts"

/** What the plain model came to, in model units. */
export interface ArcFlowResult {
  /** Cost of the best plan found; `undefined` if none. */
  cost: number | undefined
  /** Lower bound of the library's search. */
  bound: number
  proven: boolean
  arcs: number
}

/**
 * The plain arc-flow model given to the integer programming library whole, for comparison and as a second opinion: places along the
 * longest stock are nodes, a piece is an arc from place to place, a stock an arc back from its length, and each bar a unit of flow.
 * After J. Valerio de Carvalho, Exact solution of bin-packing problems using column generation and branch-and-bound, 1999 (from memory).
 * @param seconds time given to the library
 */
export async function arcFlow(model: CuttingModel, seconds: number): Promise<ArcFlowResult> {
  const highs = await solver()
  const { data, arcs } = arcFlowData(model, highs.infinity)
  const program = highs.createModel(data)
  try {
    program.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: WHOLE_GAP, time_limit: seconds })
    program.run()
    const proven = program.getModelStatus() === OPTIMAL
    const feasible = program.info.get("primal_solution_status") === FEASIBLE
    const bound = Math.ceil(Number(program.info.get("mip_dual_bound")) - ROUNDING)
    const cost = feasible ? Math.round(program.getObjectiveValue()) : undefined
    return { cost, bound: proven ? (cost ?? bound) : Math.max(0, bound), proven, arcs }
  } finally {
    program.dispose()
  }
}

/** The library's statuses. */
const OPTIMAL = 7
const FEASIBLE = 2
/** Costs are whole numbers: a plan nearer to the bound than this cannot be bettered. */
const WHOLE_GAP = 0.99
/** Allowance for rounding in the library's bound. */
const ROUNDING = 1e-6
const INTEGER = 1 as const

interface Arc {
  from: number
  to: number
  type: number
  most: number
}

function arcFlowData(model: CuttingModel, infinity: number): { data: ModelData; arcs: number } {
  const longest = Math.max(...model.stocks.map((stock) => stock.capacity))
  const { arcs, nodes } = pieceArcs(model, longest)
  const places = [...nodes].sort((a, b) => a - b)
  const row = new Map(places.map((place, index) => [place, index]))
  const types = model.widths.length
  const starts = [0]
  const indices: number[] = []
  const values: number[] = []
  const put = (at: number, value: number) => {
    indices.push(at)
    values.push(value)
  }
  for (const { from, to, type } of arcs) {
    put(row.get(from) ?? 0, -1)
    put(row.get(to) ?? 0, 1)
    put(places.length + type, 1)
    starts.push(indices.length)
  }
  for (const { capacity } of model.stocks) {
    const end = places.filter((place) => place <= capacity).at(-1) ?? 0
    if (end > 0) {
      put(row.get(end) ?? 0, -1)
      put(0, 1)
    }
    starts.push(indices.length)
  }
  const rests = places.slice(2).map((place, index) => ({ from: places[index + 1] as number, to: place }))
  for (const { from, to } of rests) {
    put(row.get(from) ?? 0, -1)
    put(row.get(to) ?? 0, 1)
    starts.push(indices.length)
  }
  const numCols = arcs.length + model.stocks.length + rests.length
  const numRows = places.length + types
  const zeros = (count: number) => new Array<number>(count).fill(0)
  const limits = model.stocks.map(({ limit }) => (limit === Number.POSITIVE_INFINITY ? infinity : limit))
  const data: ModelData = {
    numCols,
    numRows,
    colCost: [...zeros(arcs.length), ...model.stocks.map((stock) => stock.cost), ...zeros(rests.length)],
    colLower: zeros(numCols),
    colUpper: [...arcs.map((arc) => arc.most), ...limits, ...rests.map(() => infinity)],
    rowLower: [...zeros(places.length), ...model.demand],
    rowUpper: [...zeros(places.length), ...model.demand.map(() => infinity)],
    integrality: new Array<typeof INTEGER>(numCols).fill(INTEGER),
    matrix: { format: "csc", numRows, numCols, starts, indices, values },
  }
  return { data, arcs: arcs.length }
}

/** Arcs of pieces laid widest first, only from places that wider pieces can reach, as often in a row as pieces are wanted. */
function pieceArcs(model: CuttingModel, longest: number): { arcs: Arc[]; nodes: Set<number> } {
  const arcs: Arc[] = []
  const top = Math.min(longest, totalWidth(model))
  const reached = new Set([0])
  model.widths.forEach((width, type) => {
    const most = model.demand[type] as number
    const seen = new Set<number>()
    for (const start of [...reached]) {
      for (let turn = 0, from = start; turn < most && from + width <= top; turn++, from += width) {
        if (!seen.has(from)) arcs.push({ from, to: from + width, type, most })
        seen.add(from)
        reached.add(from + width)
      }
    }
  })
  return { arcs, nodes: reached }
}
