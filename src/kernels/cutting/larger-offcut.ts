import type { FilledBar } from "./arrange-bars.ts"
import type { CuttingModel } from "./cutting-model.ts"

/**
 * The same bars with pieces moved and exchanged so that the largest offcut grows: for each bar in turn as the one to be emptied, a
 * piece goes over where there is room, or changes place with a shorter one, as long as that helps. A search by hand's means, not a
 * proof. Bars of missing lengths stay as they are.
 */
export function withLargerOffcut(model: CuttingModel, bars: readonly FilledBar[]): FilledBar[] {
  const fixed = bars.filter((bar) => isMissing(model, bar))
  const movable = bars.filter((bar) => !isMissing(model, bar))
  let best = movable.map(copy)
  for (const target of distinct(movable).slice(0, TARGETS)) {
    const tried = movable.map(copy)
    emptyOut(model, tried, target)
    if (largestRoom(model, tried) > largestRoom(model, best)) best = tried
  }
  return [...best.filter((bar) => bar.types.length > 0), ...fixed]
}

/** Bars tried as the one to be emptied: the first of each kind, at most so many. */
const TARGETS = 60

/** Indices of the bars that differ from all before them. */
function distinct(bars: readonly FilledBar[]): number[] {
  const seen = new Set<string>()
  return bars.flatMap((bar, index) => {
    const key = `${bar.stock}:${bar.types.join()}`
    if (seen.has(key)) return []
    seen.add(key)
    return [index]
  })
}

function isMissing(model: CuttingModel, bar: FilledBar): boolean {
  return (model.stocks[bar.stock]?.source ?? -1) < 0
}

function copy(bar: FilledBar): FilledBar {
  return { stock: bar.stock, types: [...bar.types] }
}

function room(model: CuttingModel, bar: FilledBar): number {
  return bar.types.reduce(
    (left, type) => left - (model.widths[type] as number),
    model.stocks[bar.stock]?.capacity ?? 0,
  )
}

function largestRoom(model: CuttingModel, bars: readonly FilledBar[]): number {
  return bars.reduce((largest, bar) => Math.max(largest, room(model, bar)), 0)
}

/** Repeats the single best move or exchange until none makes the target's room larger. */
function emptyOut(model: CuttingModel, bars: FilledBar[], target: number): void {
  const from = bars[target] as FilledBar
  while (bestMove(model, bars, from)) from.types.sort((a, b) => a - b)
}

function bestMove(model: CuttingModel, bars: readonly FilledBar[], from: FilledBar): boolean {
  let gain = 0
  let apply: (() => void) | undefined
  for (const index of distinct(bars)) {
    const to = bars[index] as FilledBar
    if (to === from) continue
    const free = room(model, to)
    from.types.forEach((type, at) => {
      const width = model.widths[type] as number
      if (width <= free && width > gain && from.types.length > 1) {
        gain = width
        apply = () => to.types.push(...from.types.splice(at, 1))
      }
      to.types.forEach((other, place) => {
        const more = width - (model.widths[other] as number)
        if (more <= gain || more > free) return
        gain = more
        apply = () => {
          from.types[at] = other
          to.types[place] = type
        }
      })
    })
  }
  apply?.()
  for (const bar of bars) bar.types.sort((a, b) => a - b)
  return apply !== undefined
}
