import type { CuttingModel } from "../cutting-model.ts"
import { totalWidth } from "../cutting-model.ts"
import { bestFilling } from "./bar-filling.ts"

/**
 * Totals that a bill of lengths can come to. A total is possible only if some choice of lengths costs exactly that and holds, by
 * its best-filled capacities, all the width that is wanted: the material bound with prices.
 */
export interface PossibleTotals {
  /** Least possible total not below `from`; `Infinity` if none up to the top. */
  next(from: number): number
  /** Greatest possible total below `total`; -1 if none. */
  before(total: number): number
}

/** The possible totals of a model up to `top` (model units); without detail, every whole number, where the table would be too large. */
export function possibleTotals(model: CuttingModel, top: number): PossibleTotals {
  if (top * model.stocks.length > TABLE_CELLS) return everyWhole(top)
  const room = greatestRoom(model, top)
  const wanted = totalWidth(model)
  const possible = (total: number) => (room[total] as number) >= wanted
  return {
    next(from) {
      for (let total = Math.max(0, from); total <= top; total++) if (possible(total)) return total
      return Number.POSITIVE_INFINITY
    },
    before(total) {
      for (let at = Math.min(total - 1, top); at >= 0; at--) if (possible(at)) return at
      return -1
    },
  }
}

/**
 * Martello and Toth's bound L2 on the number of equal bars: for each limit between small and large, large pieces need a bar each and
 * the small ones fill what is left. S. Martello, P. Toth, Knapsack Problems, 1990, section 8.3 (from memory).
 */
export function martelloToth(widths: readonly number[], demand: readonly number[], capacity: number): number {
  const limits = [0, ...widths.filter((width) => 2 * width <= capacity)]
  return Math.max(0, ...limits.map((limit) => boundAt(limit, widths, demand, capacity)))
}

/** Fewest bars with which a bill of exactly `cost` can hold the width wanted; 0 where the table would be too large. */
export function fewestBars(model: CuttingModel, cost: number, atMost: number): number {
  if ((cost + 1) * (atMost + 1) * model.stocks.length > TABLE_CELLS) return 0
  const free = model.stocks.filter((stock) => stock.cost === 0)
  if (free.some((stock) => stock.limit === Number.POSITIVE_INFINITY)) return 0
  const wanted = totalWidth(model) - free.reduce((sum, stock) => sum + stock.limit * stock.capacity, 0)
  let room = new Float64Array(cost + 1).fill(Number.NEGATIVE_INFINITY)
  room[0] = 0
  for (let bars = 0; bars <= atMost; bars++) {
    if ((room[cost] as number) >= wanted) return bars
    room = withOneMore(model, room)
  }
  return atMost + 1
}

/** Cells of a table that are still worth filling. */
const TABLE_CELLS = 20_000_000

/** Steps of the search for the best-filled length. */
const FILLING_STEPS = 5_000

function everyWhole(top: number): PossibleTotals {
  return {
    next: (from) => (from <= top ? Math.max(0, from) : Number.POSITIVE_INFINITY),
    before: (total) => Math.min(total - 1, top),
  }
}

function withOneMore(model: CuttingModel, room: Float64Array): Float64Array<ArrayBuffer> {
  const next = new Float64Array(room.length).fill(Number.NEGATIVE_INFINITY)
  for (const { cost, capacity } of model.stocks) {
    if (cost === 0) continue
    for (let total = cost; total < room.length; total++) {
      next[total] = Math.max(next[total] as number, (room[total - cost] as number) + capacity)
    }
  }
  return next
}

/** The greatest width that lengths of each exact total can hold; minus infinity where no lengths come to it. */
function greatestRoom(model: CuttingModel, top: number): Float64Array {
  const filled = bestFilled(model)
  const room = new Float64Array(top + 1).fill(Number.NEGATIVE_INFINITY)
  room[0] = 0
  model.stocks.forEach(({ cost, limit }, index) => {
    const capacity = filled[index] as number
    if (capacity === 0) return
    if (cost === 0) addFree(room, capacity, limit)
    else if (limit === Number.POSITIVE_INFINITY) addEndless(room, capacity, cost)
    else for (const times of binaryParts(limit)) addOnce(room, times * capacity, times * cost)
  })
  return room
}

/** Of each stock, the greatest width that pieces can fill; its capacity where that is not settled soon. */
function bestFilled(model: CuttingModel): number[] {
  const { widths, demand } = model
  return model.stocks.map(({ capacity }) => {
    const found = bestFilling(widths, { values: widths, available: demand, capacity, steps: FILLING_STEPS })
    return found.exact ? found.value : capacity
  })
}

function addFree(room: Float64Array, capacity: number, limit: number): void {
  for (let total = 0; total < room.length; total++) room[total] = (room[total] as number) + capacity * limit
}

function addEndless(room: Float64Array, capacity: number, cost: number): void {
  for (let total = cost; total < room.length; total++) {
    room[total] = Math.max(room[total] as number, (room[total - cost] as number) + capacity)
  }
}

function addOnce(room: Float64Array, capacity: number, cost: number): void {
  for (let total = room.length - 1; total >= cost; total--) {
    room[total] = Math.max(room[total] as number, (room[total - cost] as number) + capacity)
  }
}

function binaryParts(limit: number): number[] {
  const parts: number[] = []
  for (let count = 1, left = limit; left > 0; count *= 2) {
    parts.push(Math.min(count, left))
    left -= parts.at(-1) as number
  }
  return parts
}

function boundAt(
  limit: number,
  widths: readonly number[],
  demand: readonly number[],
  capacity: number,
): number {
  let alone = 0
  let large = 0
  let room = 0
  let small = 0
  widths.forEach((width, type) => {
    const count = demand[type] as number
    if (width > capacity - limit) alone += count
    else if (2 * width > capacity) {
      large += count
      room += count * (capacity - width)
    } else if (width >= limit) small += count * width
  })
  return alone + large + Math.max(0, Math.ceil((small - room) / capacity))
}
