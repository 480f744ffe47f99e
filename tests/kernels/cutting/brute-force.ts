import type { CuttingModel } from "../../../src/kernels/cutting/cutting-model.ts"

/** Least cost of a model by trying every way to fill every bar; for a handful of pieces. Shares nothing with the search. */
export function bruteForceCost(model: CuttingModel): number {
  const known = new Map<string, number>()
  const least = (left: number[], limits: number[]): number => {
    const first = left.findIndex((count) => count > 0)
    if (first < 0) return 0
    const key = `${left.join()}|${limits.join()}`
    const before = known.get(key)
    if (before !== undefined) return before
    let best = Number.POSITIVE_INFINITY
    model.stocks.forEach(({ capacity, cost }, stock) => {
      if ((limits[stock] as number) <= 0 || capacity < (model.widths[first] as number)) return
      const limitsLeft = limits.map((limit, at) => (at === stock ? limit - 1 : limit))
      const fill = (type: number, room: number, rest: number[]) => {
        if (type === rest.length) {
          best = Math.min(best, cost + least(rest, limitsLeft))
          return
        }
        const width = model.widths[type] as number
        for (let count = 0; count <= (rest[type] as number) && count * width <= room; count++) {
          fill(
            type + 1,
            room - count * width,
            rest.map((value, at) => (at === type ? value - count : value)),
          )
        }
      }
      const rest = left.map((value, at) => (at === first ? value - 1 : value))
      fill(first, capacity - (model.widths[first] as number), rest)
    })
    known.set(key, best)
    return best
  }
  return least(
    [...model.demand],
    model.stocks.map((stock) => stock.limit),
  )
}
