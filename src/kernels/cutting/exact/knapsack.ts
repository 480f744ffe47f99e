/**
 * The bounded knapsack over all capacities at once: the most value that pieces can bring into each length.
 * Values must be whole numbers below 2^53 in sum, so that every comparison is exact. Reused between calls to save memory.
 */
export class Knapsack {
  readonly #widths: readonly number[]
  readonly #capacity: number
  #best = new Float64Array(0)
  #taken = new Uint8Array(0)
  #parts: { type: number; count: number }[] = []

  /** @param widths of the types @param capacity greatest length asked about */
  constructor(widths: readonly number[], capacity: number) {
    this.#widths = widths
    this.#capacity = capacity
  }

  /** Cells that the table would have for these values and pieces. */
  cells(values: ArrayLike<number>, available: ArrayLike<number>): number {
    return this.#binaryParts(values, available).length * (this.#capacity + 1)
  }

  /** Fills the table for the values of the types and the pieces available of each; returns the steps done. */
  solve(values: ArrayLike<number>, available: ArrayLike<number>): number {
    this.#parts = this.#binaryParts(values, available)
    const row = this.#capacity + 1
    const size = this.#parts.length * row
    if (this.#taken.length < size) this.#taken = new Uint8Array(size)
    else this.#taken.fill(0, 0, size)
    if (this.#best.length < row) this.#best = new Float64Array(row)
    else this.#best.fill(0)
    const best = this.#best
    const taken = this.#taken
    let offset = 0
    for (const { type, count } of this.#parts) {
      const width = count * (this.#widths[type] as number)
      const value = count * (values[type] as number)
      for (let at = this.#capacity; at >= width; at--) {
        const filled = (best[at - width] as number) + value
        if (filled > (best[at] as number)) {
          best[at] = filled
          taken[offset + at] = 1
        }
      }
      offset += row
    }
    return size + row
  }

  /** The most value that fits into a length. */
  value(capacity: number): number {
    return this.#best[capacity] as number
  }

  /** Pieces of each type that bring that value. */
  counts(capacity: number): number[] {
    const counts = new Array<number>(this.#widths.length).fill(0)
    let left = capacity
    for (let part = this.#parts.length - 1; part >= 0; part--) {
      if (this.#taken[part * (this.#capacity + 1) + left] !== 1) continue
      const { type, count } = this.#parts[part] as { type: number; count: number }
      counts[type] = (counts[type] as number) + count
      left -= count * (this.#widths[type] as number)
    }
    return counts
  }

  /** Each type's count as 1, 2, 4 ... and a rest, so that any number of pieces is a choice of parts. */
  #binaryParts(values: ArrayLike<number>, available: ArrayLike<number>): { type: number; count: number }[] {
    const parts: { type: number; count: number }[] = []
    for (let type = 0; type < this.#widths.length; type++) {
      if (!((values[type] as number) > 0)) continue
      let left = Math.min(
        available[type] as number,
        Math.floor(this.#capacity / (this.#widths[type] as number)),
      )
      for (let count = 1; left > 0; count *= 2) {
        const part = Math.min(count, left)
        parts.push({ type, count: part })
        left -= part
      }
    }
    return parts
  }
}
