import type { Highs, Model } from "highs"
import highsLoader from "highs"
import { invariant } from "../../fault.ts"
import type { CuttingModel } from "../cutting-model.ts"
import type { Effort } from "./effort.ts"

/** A column of the master: a bar's pieces and its stock. */
export interface Column {
  stock: number
  counts: number[]
}

/** What the linear program says: its value, a price for each width and each limited stock, and how often each column is used. */
export interface MasterSolution {
  value: number
  prices: Float64Array
  stockPrices: number[]
  uses: Float64Array
}

/**
 * The linear program over the columns so far: cover the demand at least cost. A place for a width may hold any narrower piece
 * (columns without cost say so), which makes the prices fall with the width and settles them sooner.
 */
export class Master {
  readonly #model: CuttingModel
  readonly #program: Model
  readonly #infinity: number
  readonly #limited: number[]
  readonly #seen = new Set<string>()
  readonly #open: boolean[] = []
  readonly columns: Column[] = []

  private constructor(model: CuttingModel, highs: Highs) {
    this.#model = model
    this.#infinity = highs.infinity
    this.#limited = model.stocks.flatMap((stock, index) =>
      stock.limit === Number.POSITIVE_INFINITY ? [] : [index],
    )
    this.#program = highs.createModel()
    this.#program.options.set({ output_flag: false, presolve: "off", solver: "simplex", simplex_strategy: 4 })
    for (const count of model.demand) this.#program.addRow(count, this.#infinity, { indices: [], values: [] })
    for (const stock of this.#limited) {
      this.#program.addRow(-this.#infinity, model.stocks[stock]?.limit ?? 0, { indices: [], values: [] })
    }
    for (let type = 0; type + 1 < model.widths.length; type++) {
      this.#program.addCol(0, 0, this.#infinity, { indices: [type, type + 1], values: [-1, 1] })
    }
  }

  /** A master without columns; `close` it when done. */
  static async open(model: CuttingModel): Promise<Master> {
    return new Master(model, await solver())
  }

  /** Adds a column; false if it is there already. */
  add(column: Column): boolean {
    const key = `${column.stock}:${column.counts.join()}`
    if (this.#seen.has(key)) return false
    this.#seen.add(key)
    const indices = column.counts.flatMap((count, type) => (count > 0 ? [type] : []))
    const values = indices.map((type) => column.counts[type] as number)
    const limited = this.#limited.indexOf(column.stock)
    if (limited >= 0) {
      indices.push(this.#model.widths.length + limited)
      values.push(1)
    }
    this.#program.addCol(this.#model.stocks[column.stock]?.cost ?? 0, 0, this.#infinity, { indices, values })
    this.columns.push(column)
    this.#open.push(true)
    return true
  }

  /** Asks for less: what is still to be cut, and how many of each stock are left. Columns that bring more than asked are shut. */
  ask(demand: readonly number[], limits: readonly number[]): void {
    demand.forEach((count, type) => {
      this.#program.changeRowBounds(type, count, this.#infinity)
    })
    this.#limited.forEach((stock, at) => {
      this.#program.changeRowBounds(demand.length + at, -this.#infinity, limits[stock] as number)
    })
    this.columns.forEach((column, index) => {
      const open =
        (limits[column.stock] as number) > 0 &&
        column.counts.every((count, type) => count <= (demand[type] as number))
      if (open === this.#open[index]) return
      this.#open[index] = open
      this.#program.changeColBounds(this.#slides + index, 0, open ? this.#infinity : 0)
    })
  }

  /** Solves the linear program over the columns so far. */
  solve(effort: Effort): MasterSolution {
    this.#program.run()
    effort.spend(STEPS_PER_SOLVE * this.#model.widths.length)
    invariant(this.#program.getModelStatus() === OPTIMAL, "cutting: the master program has a solution")
    const { colValue, rowDual } = this.#program.getSolution()
    const types = this.#model.widths.length
    const stockPrices = new Array<number>(this.#model.stocks.length).fill(0)
    this.#limited.forEach((stock, at) => {
      stockPrices[stock] = Math.min(0, rowDual[types + at] as number)
    })
    const prices = rowDual.slice(0, types).map((price) => Math.max(0, price))
    return {
      value: this.#program.getObjectiveValue(),
      prices,
      stockPrices,
      uses: colValue.slice(this.#slides),
    }
  }

  /** Frees the program's memory. */
  close(): void {
    this.#program.dispose()
  }

  get #slides(): number {
    return Math.max(0, this.#model.widths.length - 1)
  }
}

/** The linear and integer programming library, loaded once. */
export function solver(): Promise<Highs> {
  loaded ??= highsLoader()
  return loaded
}

let loaded: Promise<Highs> | undefined
/** The library's status of a program solved to the end. */
const OPTIMAL = 7
/** Steps that one warm solve costs for each row; measured, rounded up. */
const STEPS_PER_SOLVE = 10_000
