/** One bar to fill: what each width is worth, how many pieces there are, and the room. */
export interface BarToFill {
  values: ArrayLike<number>
  available: ArrayLike<number>
  capacity: number
  /** Steps of the search at most. */
  steps: number
  /** All types by `rankedTypes`, where they are known already. */
  ranked?: ArrayLike<number>
}

/** A filled bar: pieces of each type, their value, and whether no filling is worth more. */
export interface FillingFound {
  counts: number[]
  value: number
  exact: boolean
  steps: number
}

/**
 * The most valuable filling of one bar by depth-first search: types in order of value for width, as many as fit first, cut off
 * where the rest of the room at the next type's rate cannot catch up. Exact unless the steps run out.
 * After P. Gilmore, R. Gomory, A linear programming approach to the cutting stock problem, part II, 1963 (from memory).
 */
export function bestFilling(
  widths: readonly number[],
  { values, available, capacity, steps, ranked = rankedTypes(widths, values) }: BarToFill,
): FillingFound {
  const order = fitting(ranked, { widths, available, capacity })
  const depth = order.length
  const rate = Float64Array.from(order, (type) => (values[type] as number) / (widths[type] as number))
  const narrowest = narrowestFrom(widths, order)
  const chosen = new Int32Array(depth)
  let best: Int32Array = chosen.slice()
  let most = 0
  let value = 0
  let room = capacity
  let at = 0
  let left = steps
  for (;;) {
    while (
      at < depth &&
      room >= (narrowest[at] as number) &&
      value + room * (rate[at] as number) > most * NEARLY
    ) {
      const type = order[at] as number
      const count = Math.min(available[type] as number, Math.floor(room / (widths[type] as number)))
      chosen[at] = count
      value += count * (values[type] as number)
      room -= count * (widths[type] as number)
      at++
    }
    if (value > most) {
      most = value
      best = chosen.slice()
      best.fill(0, at)
    }
    left -= depth - at + 1
    do at--
    while (at >= 0 && chosen[at] === 0)
    if (at < 0 || left <= 0) break
    const type = order[at] as number
    chosen[at] = (chosen[at] as number) - 1
    value -= values[type] as number
    room += widths[type] as number
    at++
  }
  const counts = new Array<number>(widths.length).fill(0)
  for (let index = 0; index < depth; index++) counts[order[index] as number] = best[index] as number
  return { counts, value: most, exact: at < 0, steps: steps - left }
}

/** A filling must be better by more than binary noise. */
const NEARLY = 1 + 1e-12

/** Types worth something, in order of value for width. */
export function rankedTypes(widths: readonly number[], values: ArrayLike<number>): Int32Array {
  const rate = Float64Array.from(widths, (width, type) => (values[type] as number) / width)
  const worth = widths.flatMap((_, type) => ((values[type] as number) > 0 ? [type] : []))
  return Int32Array.from(worth.sort((a, b) => (rate[b] as number) - (rate[a] as number) || a - b))
}

/** The types of which there are pieces and that fit, in the same order. */
function fitting(
  ranked: ArrayLike<number>,
  {
    widths,
    available,
    capacity,
  }: { widths: readonly number[]; available: ArrayLike<number>; capacity: number },
): Int32Array {
  const order = new Int32Array(ranked.length)
  let count = 0
  for (let at = 0; at < ranked.length; at++) {
    const type = ranked[at] as number
    if ((available[type] as number) > 0 && (widths[type] as number) <= capacity) order[count++] = type
  }
  return order.subarray(0, count)
}

function narrowestFrom(widths: readonly number[], order: Int32Array): Float64Array {
  const narrowest = new Float64Array(order.length + 1)
  narrowest[order.length] = Number.POSITIVE_INFINITY
  for (let at = order.length - 1; at >= 0; at--)
    narrowest[at] = Math.min(narrowest[at + 1] as number, widths[order[at] as number] as number)
  return narrowest
}
