import type { CuttingModel } from "../cutting-model.ts"
import type { ProvedPrices } from "./column-generation.ts"
import type { Effort } from "./effort.ts"
import type { Column } from "./master.ts"

/**
 * Every pattern that a plan of at most `bound + gap` can need. A pattern that costs more than its pieces are priced at by over `gap`
 * cannot be in such a plan; nor need one be that leaves room for another piece wanted, or for a wider one in place of one it has.
 * @returns the columns, or undefined if there are more than `most` or the effort runs out
 */
export function worthwhilePatterns(
  model: CuttingModel,
  proved: ProvedPrices,
  gap: number,
  most: number,
  effort: Effort,
): Column[] | undefined {
  return new Enumeration(model, proved, gap, most, effort).columns()
}

/** Allowance for rounding in prices: keeps a pattern on the edge. */
const EDGE = 1e-6
/** Cells of the table of what the rest can still bring. */
const TABLE_CELLS = 30_000_000
/** Steps counted for each node of the enumeration. */
const STEPS_PER_NODE = 12

class Enumeration {
  readonly #model: CuttingModel
  readonly #prices: number[]
  readonly #need: number[]
  readonly #most: number
  readonly #effort: Effort
  readonly #rest: Float64Array[]
  readonly #stocks: number[]
  readonly #counts: number[]
  readonly #found: Column[] = []
  #nodes = 0
  #over = false

  constructor(model: CuttingModel, proved: ProvedPrices, gap: number, most: number, effort: Effort) {
    this.#model = model
    this.#prices = [...proved.prices]
    this.#most = most
    this.#effort = effort
    this.#need = model.stocks.map(
      (stock, at) => stock.cost * proved.scale + (proved.charges[at] as number) - (gap + EDGE) * proved.scale,
    )
    this.#stocks = model.stocks
      .map((_, index) => index)
      .sort((a, b) => (model.stocks[a]?.capacity ?? 0) - (model.stocks[b]?.capacity ?? 0))
    this.#counts = new Array<number>(model.widths.length).fill(0)
    const capacity = Math.max(0, ...model.stocks.map((stock) => stock.capacity))
    this.#over = (capacity + 1) * (model.widths.length + 1) > TABLE_CELLS
    const kept = tables.get(proved)
    this.#rest = kept ?? (this.#over ? [] : restTable(model, this.#prices, capacity))
    if (kept || this.#over) return
    tables.set(proved, this.#rest)
    effort.spend((capacity + 1) * model.widths.length)
  }

  columns(): Column[] | undefined {
    for (const stock of this.#stocks) {
      if (this.#over) return undefined
      const capacity = this.#model.stocks[stock]?.capacity ?? 0
      if ((this.#rest[0]?.[capacity] as number) < (this.#need[stock] as number)) continue
      this.#choose(0, capacity, this.#need[stock] as number, stock)
    }
    this.#effort.spend((this.#nodes % NODES_PER_CHECK) * STEPS_PER_NODE)
    return this.#over ? undefined : this.#found
  }

  /** The pieces chosen as they are, and with one or more of each width from `from` on; `need` is the price still wanted. */
  #choose(from: number, room: number, need: number, stock: number): void {
    if (++this.#nodes % NODES_PER_CHECK === 0) this.#check()
    const { widths, demand } = this.#model
    for (let type = from; type < widths.length && !this.#over; type++) {
      if ((this.#rest[type]?.[room] as number) < need) return
      const width = widths[type] as number
      const price = this.#prices[type] as number
      const most = Math.min(demand[type] as number, Math.floor(room / width))
      for (let count = most; count > 0; count--) {
        this.#counts[type] = count
        this.#choose(type + 1, room - count * width, need - count * price, stock)
      }
      this.#counts[type] = 0
    }
    if (need <= 0 && !this.#over) this.#keep(room, stock)
  }

  #keep(room: number, stock: number): void {
    if (this.#hasCheaper(room, stock) || !this.#isFull(room)) return
    this.#found.push({ stock, counts: [...this.#counts] })
    if (this.#found.length > this.#most) this.#over = true
  }

  /** True if an endless stock that costs no more, and is as short or shorter, takes the same pieces. */
  #hasCheaper(room: number, stock: number): boolean {
    const { capacity, cost } = this.#model.stocks[stock] as { capacity: number; cost: number }
    const used = capacity - room
    return this.#model.stocks.some(
      (other, at) =>
        at !== stock &&
        other.limit === Number.POSITIVE_INFINITY &&
        other.capacity >= used &&
        (other.cost < cost || (other.cost === cost && at > stock)),
    )
  }

  /** True if no further piece fits and none can give way to a wider one. */
  #isFull(room: number): boolean {
    const { widths, demand } = this.#model
    let spare = room
    for (let type = widths.length - 1; type >= 0; type--) {
      const width = widths[type] as number
      const count = this.#counts[type] as number
      if (count < (demand[type] as number) && width <= spare) return false
      if (count > 0) spare = Math.max(spare, room + width)
    }
    return true
  }

  #check(): void {
    this.#effort.spend(NODES_PER_CHECK * STEPS_PER_NODE)
    if (this.#effort.exhausted || this.#nodes > NODES_AT_MOST) this.#over = true
  }
}

/** The tables of prices asked about again; a model has prices of its own. */
const tables = new WeakMap<ProvedPrices, Float64Array[]>()

/** Nodes between two looks at the effort. */
const NODES_PER_CHECK = 4096
/** Nodes after which the patterns are too many to list. */
const NODES_AT_MOST = 20_000_000

/** For each type and room, the most price that this type and all narrower ones can bring. */
function restTable(model: CuttingModel, prices: readonly number[], capacity: number): Float64Array[] {
  const table = new Array<Float64Array>(model.widths.length + 1)
  table[model.widths.length] = new Float64Array(capacity + 1)
  for (let type = model.widths.length - 1; type >= 0; type--) {
    const row = Float64Array.from(table[type + 1] as Float64Array)
    const width = model.widths[type] as number
    for (
      let left = Math.min(model.demand[type] as number, Math.floor(capacity / width)), count = 1;
      left > 0;
      count *= 2
    ) {
      const part = Math.min(count, left)
      const value = part * (prices[type] as number)
      for (let at = capacity; at >= part * width; at--) {
        const filled = (row[at - part * width] as number) + value
        if (filled > (row[at] as number)) row[at] = filled
      }
      left -= part
    }
    table[type] = row
  }
  return table
}
