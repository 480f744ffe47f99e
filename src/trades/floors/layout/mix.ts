import type { Mm } from "../../../kernels/units.ts"
import { kept, lengthOf } from "./boards.ts"
import { type EndLimits, type Run, same } from "./end-plan.ts"
import type { State } from "./floor-state.ts"
import { type PackedLength, packsHolding } from "./packs.ts"
import type { Place } from "./stock.ts"

/** Limits of a floor of boards of several lengths. */
type MixLimits = EndLimits & { lengths: readonly PackedLength[] }

/** Orders of whole boards tried for one starter. */
const mostOrders = 4
/** Starters tried at most, of those that use an offcut up and of others. */
const mostStarts = 24

/**
 * Ways to joint a run of boards of several lengths: starters worth trying, each with whole boards of any length of the mix after it, the
 * lengths that opened packs hold most of first. Those that keep the rules; where none does, some that do not.
 * @param steps how many fresh cuts of a starter are spread from the least end to the longest board
 */
export function mixedPlaces(state: State, run: Run, limits: MixLimits, steps: number): Place[][] {
  const starts = startsTried(state, run, limits, steps)
  const good = starts.flatMap((start) => ordersFrom(start, state, run, limits))
  if (good.length > 0) return good
  const lenient = { ...limits, stagger: 0, leastEnd: same }
  return starts.flatMap((start) => ordersFrom(start, state, run, lenient))
}

function startsTried(state: State, run: Run, limits: MixLimits, steps: number): Mm[] {
  const { boardLength, boardWidth, leastEnd, kerf, lengths } = limits
  let tried = new Set<Mm>()
  const add = (start: Mm) => {
    if (start >= leastEnd - same && start <= boardLength && start < run.right - run.left) tried.add(start)
  }
  const sums = sumsOf(lengths, run.right - run.left - leastEnd)
  const addFinish = (finish: Mm) => {
    if (finish >= leastEnd - same) for (const sum of sums) add(run.right - run.left - finish - sum)
  }
  for (const offcut of state.offcuts) {
    const { left, right } = kept(offcut, boardWidth)
    if (right) add(lengthOf(offcut))
    if (left) addFinish(lengthOf(offcut))
  }
  const usingUp = tried
  tried = new Set()
  for (const { length } of lengths) {
    add(length)
    addFinish(length)
    add(length - kerf - leastEnd)
    addFinish(length - kerf - leastEnd)
  }
  add(leastEnd)
  addFinish(leastEnd)
  const span = boardLength - leastEnd
  for (let step = 0; step < steps; step++) add(Math.round(leastEnd + (span * step) / steps))
  return [...new Set([...spread(usingUp), ...spread(tried)])]
}

function spread(starts: ReadonlySet<Mm>): Mm[] {
  const every = Math.ceil(starts.size / mostStarts)
  return [...starts].filter((_, index) => index % every === 0)
}

/** Lengths that whole boards add up to, from none to the most given. */
function sumsOf(lengths: readonly PackedLength[], most: Mm): Mm[] {
  let found = new Set<Mm>([0])
  for (let before = 0; before < found.size; ) {
    before = found.size
    const longer = [...found].flatMap((sum) => lengths.map((each) => sum + each.length))
    found = new Set([...found, ...longer.filter((sum) => sum <= most)])
  }
  return [...found]
}

function ordersFrom(start: Mm, state: State, run: Run, limits: MixLimits): Place[][] {
  const { boardLength, leastEnd, stagger } = limits
  const found: Place[][] = []
  const order = mostInHandFirst(state, limits.lengths)
  const isFree = (joint: Mm) => state.last.every((other) => Math.abs(joint - other) >= stagger)
  const visit = (joints: readonly Mm[]): void => {
    const at = joints.at(-1)!
    const rest = run.right - at
    if (found.length === mostOrders || rest < leastEnd - same || !isFree(at)) return
    if (rest <= boardLength + same) found.push(placesAt(run, joints))
    for (const length of order) visit([...joints, at + length])
  }
  visit([run.left + start])
  return found
}

function mostInHandFirst(state: State, lengths: readonly PackedLength[]): Mm[] {
  const packs = packsHolding(state.taken, lengths)
  const share = (index: number) =>
    (packs * lengths[index]!.perPack - state.taken[index]!) / lengths[index]!.perPack
  return lengths
    .map((each, index) => ({ length: each.length, inHand: share(index) }))
    .sort((a, b) => b.inHand - a.inHand || b.length - a.length)
    .map((each) => each.length)
}

function placesAt(run: Run, joints: readonly Mm[]): Place[] {
  const ends = [run.left, ...joints, run.right]
  return ends.slice(1).map((right, index): Place => {
    const role = index === 0 ? "start" : index === joints.length ? "finish" : "whole"
    return { left: ends[index]!, right, role }
  })
}
