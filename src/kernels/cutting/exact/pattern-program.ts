import type { ModelData } from "highs"
import type { CuttingModel, Pattern } from "../cutting-model.ts"
import type { Effort } from "./effort.ts"
import type { Column } from "./master.ts"
import { solver } from "./master.ts"

/** What the integer program over given patterns came to. */
export interface ProgramResult {
  /** The best plan found that costs no more than asked, if any. */
  plan: Pattern[] | undefined
  /** True if the search was complete: the plan is the best of these patterns, or there is none. */
  complete: boolean
}

/** What to ask of the integer program. */
export interface ProgramAsked {
  /** Dearest plan wanted. */
  atMost: number
  /** A plan no dearer than this ends the search. */
  target: number
  /** Minimise bought lengths in place of cost. */
  fewest?: boolean
  /** Nodes of branch and bound at most. */
  nodes?: number
  seconds?: number
}

/** The best plan made of the patterns given, by branch and bound over a linear program. */
export async function patternProgram(
  model: CuttingModel,
  columns: readonly Column[],
  asked: ProgramAsked,
  effort: Effort,
): Promise<ProgramResult> {
  if (columns.length === 0) return { plan: undefined, complete: true }
  const highs = await solver()
  const program = highs.createModel(programData(model, columns, asked, highs.infinity))
  try {
    const rows = model.widths.length + 1
    const nodes = Math.min(asked.nodes ?? Number.POSITIVE_INFINITY, effort.nodes(rows, columns.length))
    program.options.set({
      output_flag: false,
      mip_rel_gap: 0,
      mip_abs_gap: WHOLE_GAP,
      mip_max_nodes: nodes,
      random_seed: 0,
    })
    if (asked.fewest !== true) program.options.set({ objective_target: asked.target + WHOLE_GAP / 2 })
    const seconds = Math.min(effort.seconds, asked.seconds ?? Number.POSITIVE_INFINITY)
    if (Number.isFinite(seconds)) program.options.set({ time_limit: Math.max(LEAST_SECONDS, seconds) })
    program.run()
    const status = program.getModelStatus()
    effort.spendNodes(Number(program.info.get("mip_node_count")), rows, columns.length)
    if (status === INFEASIBLE) return { plan: undefined, complete: true }
    const feasible = program.info.get("primal_solution_status") === FEASIBLE
    const plan = feasible ? planOf(columns, program.getSolution().colValue) : undefined
    return { plan, complete: status === OPTIMAL }
  } finally {
    program.dispose()
  }
}

/** The library's statuses: solved to the end; proved to have no solution; a feasible solution is there. */
const OPTIMAL = 7
const INFEASIBLE = 8
const FEASIBLE = 2
/** Costs are whole numbers: a plan nearer to the bound than this cannot be bettered. */
const WHOLE_GAP = 0.99
/** The library takes no time limit of 0. */
const LEAST_SECONDS = 0.01

function programData(
  model: CuttingModel,
  columns: readonly Column[],
  asked: ProgramAsked,
  infinity: number,
): ModelData {
  const types = model.widths.length
  const limited = model.stocks.flatMap((stock, index) =>
    stock.limit === Number.POSITIVE_INFINITY ? [] : [index],
  )
  const slides = Math.max(0, types - 1)
  const starts = [0]
  const indices: number[] = []
  const values: number[] = []
  const end = () => starts.push(indices.length)
  const put = (row: number, value: number) => {
    indices.push(row)
    values.push(value)
  }
  for (const { stock, counts } of columns) {
    counts.forEach((count, type) => {
      if (count > 0) put(type, count)
    })
    const cost = model.stocks[stock]?.cost ?? 0
    if (cost > 0) put(types, cost)
    const row = limited.indexOf(stock)
    if (row >= 0) put(types + 1 + row, 1)
    end()
  }
  for (let type = 0; type < slides; type++) {
    put(type, -1)
    put(type + 1, 1)
    end()
  }
  const numCols = columns.length + slides
  const costs = columns.map(({ stock }) => model.stocks[stock]?.cost ?? 0)
  const numRows = types + 1 + limited.length
  return {
    numCols,
    numRows,
    colCost: [
      ...costs.map((cost) => (asked.fewest === true ? Math.min(1, cost) : cost)),
      ...new Array<number>(slides).fill(0),
    ],
    colLower: new Array<number>(numCols).fill(0),
    colUpper: new Array<number>(numCols).fill(infinity),
    rowLower: [...model.demand, -infinity, ...limited.map(() => -infinity)],
    rowUpper: [
      ...model.demand.map(() => infinity),
      asked.atMost,
      ...limited.map((stock) => model.stocks[stock]?.limit ?? 0),
    ],
    integrality: [...columns.map(() => INTEGER), ...new Array<typeof CONTINUOUS>(slides).fill(CONTINUOUS)],
    matrix: { format: "csc", numRows, numCols, starts, indices, values },
  }
}

/** The library's kinds of variable. */
const CONTINUOUS = 0 as const
const INTEGER = 1 as const

function planOf(columns: readonly Column[], uses: Float64Array): Pattern[] {
  return columns.flatMap(({ stock, counts }, index) => {
    const times = Math.round(uses[index] as number)
    return times > 0 ? [{ stock, counts, times }] : []
  })
}
