import type { CuttingModel, Pattern } from "./cutting-model.ts"

/**
 * First-fit decreasing, as done by hand: longest piece first, into the first bar with room; a new bar is the cheapest stock for its
 * length that takes the piece (an offcut in hand before any). At the end each bar changes to the cheapest stock that its pieces fit.
 */
export function firstFitPatterns(model: CuttingModel): Pattern[] {
  const limits = model.stocks.map((stock) => stock.limit)
  const bars: { stock: number; room: number; counts: number[] }[] = []
  model.widths.forEach((width, type) => {
    for (let piece = 0; piece < (model.demand[type] as number); piece++) {
      let bar = bars.find(({ room }) => room >= width)
      if (bar === undefined) {
        bar = openBar(model, width, limits)
        bars.push(bar)
      }
      bar.room -= width
      bar.counts[type] = (bar.counts[type] as number) + 1
    }
  })
  for (const bar of bars) shrink(model, bar, limits)
  return bars.map(({ stock, counts }) => ({ stock, counts, times: 1 }))
}

function openBar(
  model: CuttingModel,
  width: number,
  limits: number[],
): { stock: number; room: number; counts: number[] } {
  let stock = -1
  let rate = Number.POSITIVE_INFINITY
  model.stocks.forEach(({ capacity, cost }, index) => {
    if (capacity < width || (limits[index] as number) <= 0 || cost / capacity >= rate) return
    stock = index
    rate = cost / capacity
  })
  limits[stock] = (limits[stock] as number) - 1
  return { stock, room: model.stocks[stock]?.capacity ?? 0, counts: model.widths.map(() => 0) }
}

function shrink(model: CuttingModel, bar: { stock: number; room: number }, limits: number[]): void {
  const now = model.stocks[bar.stock]
  if (now === undefined) return
  const used = now.capacity - bar.room
  model.stocks.forEach((other, index) => {
    if (
      other.capacity < used ||
      (limits[index] as number) <= 0 ||
      other.cost >= (model.stocks[bar.stock]?.cost ?? 0)
    )
      return
    limits[bar.stock] = (limits[bar.stock] as number) + 1
    limits[index] = (limits[index] as number) - 1
    bar.stock = index
    bar.room = other.capacity - used
  })
}
