import type { Mm } from "../../../kernels/units.ts"
import { lengthOf, type Offcut } from "./boards.ts"
import type { EndLimits } from "./end-plan.ts"
import { type PackedLength, packRun, packsHolding } from "./packs.ts"
import type { Choice, Place, Stock } from "./stock.ts"

/** How a run is filled: its places, and how each piece is taken. */
export interface Filling {
  places: readonly Place[]
  choices: readonly Choice[]
}

/** A floor laid so far. */
export interface State {
  before: State | null
  /** How its last run was filled; null where nothing is laid. */
  filling: Filling | null
  offcuts: readonly Offcut[]
  boards: number
  /** Fresh boards so far, by length. */
  taken: readonly number[]
  /** Boards, or packs and within them boards' length, to be kept few. */
  cost: number
  cuts: number
  row: number
  /** End joints of this row so far, of the row before, and of the one before that. */
  joints: readonly Mm[]
  last: readonly Mm[]
  secondLast: readonly Mm[]
  breach: Mm
  looks: number
  score: number
}

/** Length of run still to come, and of it what takes strips, by the edge they must have, mm. */
export interface StripDemand {
  length: Mm
  groove: Mm
  tongue: Mm
}

/** What boards there are. */
type StateLimits = EndLimits & { lengths: readonly PackedLength[] }

/** What counts besides boards while floors are half laid. */
export interface Weights {
  /** What an offcut is worth against a fresh board of its length. */
  offcutWorth: number
  /** What good looks weigh: 1, or 0 where boards alone count. */
  looks: 0 | 1
}

/** Offcuts and strips kept in hand: what nobody could keep in order on site is not planned with. */
const mostOffcuts = 10
const mostStrips = 8
/** What boards lying idle in opened packs weigh, as a share of their length. */
const idleWeight = 0.1
/** Weight of a breach against wasted length: nothing that can be avoided is worth it. */
const breachWeight = 1000
/** Joints nearer than this to the joint two rows back, or to a steady step, look like a pattern, mm. */
const patternReach: Mm = 40
/** What a pattern, and a stagger of less than twice the least, weigh against wasted length, mm. */
const patternWeight: Mm = 40
const nearStaggerWeight = 0.1

/** Lengths are cleared of binary noise by this, mm. */
const noise: Mm = 1e-6

/** Nothing laid yet. @param hand offcuts of other rooms */
export function emptyFloor(lengths: readonly PackedLength[], hand: readonly Offcut[] = []): State {
  return {
    before: null,
    filling: null,
    offcuts: hand,
    boards: 0,
    taken: lengths.map(() => 0),
    cost: 0,
    cuts: 0,
    row: 0,
    joints: [],
    last: [],
    secondLast: [],
    breach: 0,
    looks: 0,
    score: 0,
  }
}

/** The floor as a row begins: joints of rows before move back by one, or are forgotten after a row without boards. */
export function inRow(state: State, row: number): State {
  if (row === state.row) return state
  const followed = row === state.row + 1
  return {
    ...state,
    row,
    joints: [],
    last: followed ? state.joints : [],
    secondLast: followed ? state.last : [],
  }
}

/**
 * The floor with one more run filled; null where its score is above `most`.
 */
export function withRun(
  state: State,
  filled: { stock: Stock; filling: Filling; demand: StripDemand },
  { limits, effort, most }: { limits: StateLimits; effort: Weights; most: number },
): State | null {
  const { stock, filling, demand } = filled
  const { stagger, leastEnd } = limits
  const { places } = filling
  const joints: Mm[] = []
  for (let index = 1; index < places.length; index++) joints.push(places[index]!.left)
  const near = nearest(joints, state.last)
  let breach = state.breach + shortfall(stagger, near)
  if (joints.length > 0) {
    const ends = [places[0]!, places[places.length - 1]!]
    for (const { left, right } of ends) breach += shortfall(leastEnd, right - left)
  }
  const looks = state.looks + patterns(joints, state) + Math.max(0, 2 * stagger - near) * nearStaggerWeight
  const offcuts = inHand(stock.offcuts, limits)
  const worth = worthOf(offcuts, demand, limits)
  const score =
    lengthTaken(stock, limits) - worth * effort.offcutWorth + breach * breachWeight + looks * effort.looks
  if (score > most) return null
  return {
    before: state,
    filling,
    offcuts,
    boards: stock.boards,
    taken: stock.taken,
    cost: costOf(stock, limits),
    cuts: state.cuts + stock.cuts,
    row: state.row,
    joints: state.joints.length > 0 ? [...state.joints, ...joints] : joints,
    last: state.last,
    secondLast: state.secondLast,
    breach,
    looks,
    score,
  }
}

/** States with the same joints in the last row and the same offcuts go on alike. */
export function sameness(state: State): string {
  const offcuts = state.offcuts
    .map(({ of, from, to, low, high }) => {
      const end = from === 0 ? "L" : to === of ? "R" : "M"
      return `${end}${Math.round(to - from)}:${Math.round(low)}:${Math.round(high)}`
    })
    .sort()
  return `${state.joints.map(Math.round).join()}|${state.last.map(Math.round).join()}|${offcuts.join()}`
}

/** Which of two whole floors is better, negative for the first: rules kept, then boards, then cuts, then looks. */
export function finalOrder(a: State, b: State): number {
  return a.breach - b.breach || a.cost - b.cost || a.cuts - b.cuts || a.looks - b.looks
}

/** Length of the boards taken, mm; where they come in a mix, a share of what opened packs hold besides. */
function lengthTaken({ boards, taken }: Stock, { boardLength, lengths }: StateLimits): number {
  if (lengths.length === 1) return boards * boardLength
  const used = taken.reduce((sum, count, index) => sum + count * lengths[index]!.length, 0)
  return used + idleWeight * (packsHolding(taken, lengths) * packRun(lengths) - used)
}

function costOf({ boards, taken }: Stock, { lengths }: StateLimits): number {
  if (lengths.length === 1) return boards
  const used = taken.reduce((sum, count, index) => sum + count * lengths[index]!.length, 0)
  const packs = packsHolding(taken, lengths)
  return packs === 0 ? 0 : packs + used / (2 * packs * packRun(lengths))
}

function inHand(offcuts: readonly Offcut[], limits: EndLimits): readonly Offcut[] {
  if (offcuts.length <= Math.min(mostOffcuts, mostStrips)) return offcuts
  const isStrip = ({ low, high }: Offcut) => high - low < limits.boardWidth
  const longest = (some: Offcut[], most: number) =>
    some.sort((a, b) => lengthOf(b) - lengthOf(a)).slice(0, most)
  const isOwn = ({ room }: Offcut) => room === null
  const keeps = new Set([
    ...longest(
      offcuts.filter((offcut) => isOwn(offcut) && !isStrip(offcut)),
      mostOffcuts,
    ),
    ...longest(
      offcuts.filter((offcut) => isOwn(offcut) && isStrip(offcut)),
      mostStrips,
    ),
  ])
  return offcuts.filter((offcut) => keeps.has(offcut) || !isOwn(offcut))
}

/** Length of board that offcuts can still stand for, mm: no more than is still to be laid, strips no more than is still wanted of them. */
function worthOf(offcuts: readonly Offcut[], demand: StripDemand, limits: EndLimits): Mm {
  const { boardWidth, leastEnd } = limits
  let full = 0
  let grooved = 0
  let tongued = 0
  for (const { of, from, to, low, high } of offcuts) {
    const length = to - from
    if ((from !== 0 && to !== of) || length < leastEnd) continue
    if (high - low === boardWidth) full += length
    else if (low === 0) grooved += length
    else tongued += length
  }
  return Math.min(demand.length, full + Math.min(grooved, demand.groove) + Math.min(tongued, demand.tongue))
}

/** By how much a length is short of the least; nothing where only binary noise parts them. */
function shortfall(least: Mm, is: Mm): Mm {
  return is < least - noise ? least - is : 0
}

function nearest(joints: readonly Mm[], others: readonly Mm[]): Mm {
  let least = Number.POSITIVE_INFINITY
  for (const a of joints) for (const b of others) least = Math.min(least, Math.abs(a - b))
  return least
}

/** Joints in line with those two rows back, and steps of one size, weighed as wasted length. */
function patterns(joints: readonly Mm[], state: State): number {
  let weight = 0
  if (nearest(joints, state.secondLast) < patternReach) weight += patternWeight
  const [now, before, earlier] = [joints[0], state.last[0], state.secondLast[0]]
  if (now === undefined || before === undefined || earlier === undefined) return weight
  if (Math.abs(now - before - (before - earlier)) < patternReach) weight += patternWeight
  return weight
}
