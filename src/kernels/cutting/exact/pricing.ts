import type { CuttingModel } from "../cutting-model.ts"
import { bestFilling, rankedTypes } from "./bar-filling.ts"
import type { Effort } from "./effort.ts"
import { Knapsack } from "./knapsack.ts"

/** The best filling of each stock for given values: by table where the table is small, else by search, and by table if that stalls. */
export class Pricing {
  readonly #model: CuttingModel
  readonly #effort: Effort
  readonly #knapsack: Knapsack
  readonly #values: number[]
  readonly #counts: number[][]
  #ranked: Int32Array = new Int32Array(0)
  #rankedFor: ArrayLike<number> | undefined
  #byTable = false
  #exact = false

  /** @param effort pays for every filling asked */
  constructor(model: CuttingModel, effort: Effort) {
    this.#model = model
    this.#effort = effort
    this.#knapsack = new Knapsack(model.widths, Math.max(0, ...model.stocks.map((stock) => stock.capacity)))
    this.#values = model.stocks.map(() => 0)
    this.#counts = model.stocks.map(() => [])
  }

  /** Finds fillings that nothing beats. Values are whole numbers, so that tables are exact. */
  solve(values: ArrayLike<number>, available: ArrayLike<number>): void {
    this.quick(values, available)
    if (!this.#exact) this.#table(values, available)
  }

  /**
   * Finds good fillings in so many steps for each stock at most; `exact` says whether they are the best.
   * @param values not to be changed while they are asked for again: their order is kept
   */
  quick(values: ArrayLike<number>, available: ArrayLike<number>, atMost = QUICK_STEPS): void {
    const cells = this.#knapsack.cells(values, available)
    if (cells <= SMALL_TABLE) {
      this.#table(values, available)
      return
    }
    this.#byTable = false
    this.#exact = true
    if (this.#rankedFor !== values) {
      this.#ranked = rankedTypes(this.#model.widths, values)
      this.#rankedFor = values
      this.#effort.spend(STEPS_TO_RANK * this.#model.widths.length)
    }
    const ranked = this.#ranked
    const steps = Math.min(atMost, Math.ceil(cells / (CELLS_PER_STEP * this.#model.stocks.length)))
    this.#model.stocks.forEach(({ capacity }, stock) => {
      const found = bestFilling(this.#model.widths, { values, available, capacity, steps, ranked })
      this.#effort.spend(found.steps * CELLS_PER_STEP + STEPS_TO_SIEVE * this.#model.widths.length)
      this.#values[stock] = found.value
      this.#counts[stock] = found.counts
      this.#exact &&= found.exact
    })
  }

  /** True if no filling of any stock is worth more, but for a part in 10^12. */
  get exact(): boolean {
    return this.#exact
  }

  /** Value of the filling of a stock. */
  value(stock: number): number {
    return this.#values[stock] as number
  }

  /** Pieces of each type in the filling of a stock. */
  counts(stock: number): number[] {
    if (this.#byTable) return this.#knapsack.counts(this.#model.stocks[stock]?.capacity ?? 0)
    return this.#counts[stock] as number[]
  }

  /**
   * For each type, the best filling that begins with one piece of it, over all stocks; undefined where the table for that is too large.
   * A piece may come once more than it is wanted in a filling that it begins: such fillings are left out.
   * @param saving what a filling of a stock saves, from its value
   */
  led(
    values: ArrayLike<number>,
    available: ArrayLike<number>,
    saving: (value: number, stock: number) => number,
  ): Led[] | undefined {
    if (this.#knapsack.cells(values, available) > LED_TABLE) return undefined
    this.#table(values, available)
    const led: Led[] = []
    this.#model.widths.forEach((width, type) => {
      if ((available[type] as number) === 0) return
      let best = 0
      let from = -1
      this.#model.stocks.forEach(({ capacity }, stock) => {
        if (capacity < width) return
        const saved = saving((values[type] as number) + this.#knapsack.value(capacity - width), stock)
        if (saved <= best) return
        best = saved
        from = stock
      })
      if (from < 0) return
      const counts = this.#knapsack.counts((this.#model.stocks[from]?.capacity ?? 0) - width)
      counts[type] = (counts[type] as number) + 1
      if ((counts[type] as number) <= (available[type] as number))
        led.push({ stock: from, counts, saving: best })
    })
    return led
  }

  #table(values: ArrayLike<number>, available: ArrayLike<number>): void {
    this.#effort.spend(this.#knapsack.solve(values, available))
    this.#byTable = true
    this.#exact = true
    this.#model.stocks.forEach(({ capacity }, stock) => {
      this.#values[stock] = this.#knapsack.value(capacity)
    })
  }
}

/** A filling that begins with a given piece, and what it saves. */
export interface Led {
  stock: number
  counts: number[]
  saving: number
}

/** Cells of a table that pays where every type asks of it. */
const LED_TABLE = 30_000_000
/** Steps of a search for one stock where a good filling is enough. */
const QUICK_STEPS = 3_000
/** Cells of a table that are filled sooner than a search is set up. */
const SMALL_TABLE = 20_000
/** Cells of a table that take as long as one step of the search. */
const CELLS_PER_STEP = 4
/** Steps counted for ranking one type, and for asking of one whether it fits, before a search. */
const STEPS_TO_RANK = 100
const STEPS_TO_SIEVE = 10
