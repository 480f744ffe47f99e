import type { Highs, Model } from "highs"
import type { CuttingModel } from "../cutting-model.ts"
import { coverProgram } from "./cover-program.ts"
import type { Effort } from "./effort.ts"
import { brokenHalfCuts, type HalfCut, halfWeight, slidesInto } from "./half-cuts.ts"
import type { Column } from "./master.ts"
import { seeded } from "./seeded.ts"

/** A cover program with less room between bars in fractions and whole bars: fewer columns, more rows. */
export interface Tightened {
  /** Those columns that a plan no dearer than asked can use. */
  columns: readonly Column[]
  cuts: readonly HalfCut[]
  /** No plan of the columns given costs less than this, in fractions, unless it costs more than was asked. */
  bound: number
}

/** The cover program with cuts in the library's hands; `dispose` it when done. */
export function coverModel(
  highs: Highs,
  model: CuttingModel,
  columns: readonly Column[],
  cuts: readonly HalfCut[],
): Model {
  const program = highs.createModel(coverProgram(model, columns, highs.infinity))
  program.options.set({ output_flag: false, presolve: "off", solver: "simplex", simplex_strategy: 1 })
  for (const cut of cuts) addCut(program, columns, cut, highs.infinity)
  return program
}

/**
 * Cuts added round by round as long as they raise the bound; columns whose reduced cost is over what is left to the dearest plan wanted
 * are taken away, and cuts that hold nothing. Undefined if no plan of these columns costs as little as that.
 * @param atMost dearest plan wanted
 */
export function tightenedProgram(
  highs: Highs,
  model: CuttingModel,
  given: readonly Column[],
  atMost: number,
  effort: Effort,
): Tightened | undefined {
  const random = seeded(1)
  let columns = given
  let cuts: HalfCut[] = []
  let bound = Number.NEGATIVE_INFINITY
  let idle = 0
  let program = coverModel(highs, model, columns, cuts)
  try {
    for (;;) {
      program.options.set({ objective_bound: atMost + VALUE_ERROR })
      effort.spend(STEPS_PER_CELL * (columns.length + model.widths.length + cuts.length))
      program.run()
      const status = program.getModelStatus()
      if (status === INFEASIBLE || status === COST_BOUND) return undefined
      if (status !== OPTIMAL) return { columns, cuts: [], bound }
      const value = program.getObjectiveValue()
      if (value > atMost + VALUE_ERROR) return undefined
      const { colValue, colDual, rowDual } = program.getSolution()
      idle = value > bound + LEAST_RISE + VALUE_ERROR ? 0 : idle + 1
      bound = Math.max(bound, value - VALUE_ERROR)
      const open = columns.filter((_, at) => (colDual[at] as number) <= atMost - value + VALUE_ERROR)
      const firstCut = model.widths.length + limitedStocks(model)
      const held = cuts.filter((_, at) => Math.abs(rowDual[firstCut + at] as number) > NEARLY)
      const fresh =
        idle >= IDLE_ROUNDS || effort.exhausted
          ? []
          : brokenHalfCuts(model, columns, colValue, CUTS_PER_ROUND, random)
      if (fresh.length === 0) return { columns: open, cuts: held, bound }
      if (open.length < WORTH_REBUILDING * columns.length || held.length < WORTH_REBUILDING * cuts.length) {
        columns = open
        cuts = [...held, ...fresh]
        program.dispose()
        program = coverModel(highs, model, columns, cuts)
      } else {
        for (const cut of fresh) addCut(program, columns, cut, highs.infinity)
        cuts.push(...fresh)
      }
    }
  } finally {
    program.dispose()
  }
}

/** A price of a row this near to nothing is nothing. */
const NEARLY = 1e-6
/** By so much, in units of cost, the library's rounding may put a value wrong: bounds give that much away. */
export const VALUE_ERROR = 1e-4
/** The library's statuses: solved to the end; proved to have no solution; cost bound reached. */
export const OPTIMAL = 7
export const INFEASIBLE = 8
export const COST_BOUND = 11
/** Steps that one run costs for each row and column; measured, rounded up. */
export const STEPS_PER_CELL = 1_500
/** Cuts added in one round. */
const CUTS_PER_ROUND = 40
/** The bound must rise by so much; rounds without such a rise that are borne. */
const LEAST_RISE = 0.01
const IDLE_ROUNDS = 2
/** The program is built anew when so small a part of its columns or cuts is still wanted. */
const WORTH_REBUILDING = 0.6

function limitedStocks(model: CuttingModel): number {
  return model.stocks.filter((stock) => stock.limit !== Number.POSITIVE_INFINITY).length
}

/** Adds a cut as the last row. */
function addCut(program: Model, columns: readonly Column[], { set, least }: HalfCut, infinity: number): void {
  const indices: number[] = []
  const values: number[] = []
  columns.forEach(({ counts }, column) => {
    const weight = halfWeight(set, counts)
    if (weight === 0) return
    indices.push(column)
    values.push(weight)
  })
  for (const slide of slidesInto(set)) {
    indices.push(columns.length + slide)
    values.push(1)
  }
  program.addRow(least, infinity, { indices, values })
}
