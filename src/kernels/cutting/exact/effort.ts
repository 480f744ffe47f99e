/**
 * A budget of search, counted in elementary steps so that the same problem always gets the same search.
 * A clock, if given by the caller (a bench), may end it sooner.
 */
export class Effort {
  #spent = 0
  readonly #limit: number
  readonly #now: (() => number) | undefined
  readonly #end: number

  /** @param limitMs time on an ordinary machine, turned into steps @param now clock in ms, if real time is to count instead */
  constructor(limitMs: number, now?: () => number) {
    this.#limit = now === undefined ? limitMs * STEPS_PER_MS : Number.POSITIVE_INFINITY
    this.#now = now
    this.#end = (now?.() ?? 0) + limitMs
  }

  /** Counts steps done. */
  spend(steps: number): void {
    this.#spent += steps
  }

  /** True once nothing is left. */
  get exhausted(): boolean {
    return this.#now === undefined ? this.#spent >= this.#limit : this.#now() >= this.#end
  }

  /** Seconds left by the clock; without a clock, `Infinity`. */
  get seconds(): number {
    return this.#now === undefined ? Number.POSITIVE_INFINITY : Math.max(0, (this.#end - this.#now()) / 1000)
  }

  /** A part of what is left, to be spent on its own; steps spent on it count here when it is `settle`d. */
  part(limitMs: number): Effort {
    const steps = Math.max(0, (this.#limit - this.#spent) / STEPS_PER_MS)
    const left = this.#now === undefined ? steps : Math.max(0, this.#end - this.#now())
    return new Effort(Math.min(limitMs, left), this.#now)
  }

  /** Counts what a part has spent. */
  settle(part: Effort): void {
    this.spend(part.#spent)
  }

  /** Branch-and-bound nodes that what is left pays for, in a program of so many rows and columns. */
  nodes(rows: number, columns: number): number {
    if (this.#now !== undefined) return NODES_AT_MOST
    const left = Math.max(0, this.#limit - this.#spent)
    return Math.max(1, Math.min(NODES_AT_MOST, Math.floor(left / nodeSteps(rows, columns))))
  }

  /** Counts branch-and-bound nodes done. */
  spendNodes(nodes: number, rows: number, columns: number): void {
    this.spend(Math.max(1, nodes) * nodeSteps(rows, columns))
  }
}

/** Elementary steps (one cell of a knapsack table) that an ordinary machine does in a millisecond; measured, rounded down. */
const STEPS_PER_MS = 500_000
/** No program is ever given more nodes than this. */
const NODES_AT_MOST = 2_000_000
/** Steps that one node costs for each row and column of the program; measured, rounded up. */
const STEPS_PER_CELL = 1_000

function nodeSteps(rows: number, columns: number): number {
  return STEPS_PER_CELL * (rows + columns)
}
