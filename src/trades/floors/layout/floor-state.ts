import type { Mm } from "../../../kernels/units.ts"
import { lengthOf, type Offcut } from "./boards.ts"
import type { EndLimits } from "./end-plan.ts"
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
/** Weight of a breach against wasted length: nothing that can be avoided is worth it. */
const breachWeight = 1000
/** Joints nearer than this to the joint two rows back, or to a steady step, look like a pattern, mm. */
const patternReach: Mm = 40
/** What a pattern, and a stagger of less than twice the least, weigh against wasted length, mm. */
const patternWeight: Mm = 40
const nearStaggerWeight = 0.1

/** Lengths are cleared of binary noise by this, mm. */
const noise: Mm = 1e-6

/** Nothing laid yet. */
export function emptyFloor(): State {
  return {
    before: null,
    filling: null,
    offcuts: [],
    boards: 0,
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
  { limits, effort, most }: { limits: EndLimits; effort: Weights; most: number },
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
    stock.boards * limits.boardLength -
    worth * effort.offcutWorth +
    breach * breachWeight +
    looks * effort.looks
  if (score > most) return null
  return {
    before: state,
    filling,
    offcuts,
    boards: stock.boards,
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
export function sameness(state: State, boardLength: Mm): string {
  const offcuts = state.offcuts
    .map(({ from, to, low, high }) => {
      const end = from === 0 ? "L" : to === boardLength ? "R" : "M"
      return `${end}${Math.round(to - from)}:${Math.round(low)}:${Math.round(high)}`
    })
    .sort()
  return `${state.joints.map(Math.round).join()}|${state.last.map(Math.round).join()}|${offcuts.join()}`
}

/** Which of two whole floors is better, negative for the first: rules kept, then boards, then cuts, then looks. */
export function finalOrder(a: State, b: State): number {
  return a.breach - b.breach || a.boards - b.boards || a.cuts - b.cuts || a.looks - b.looks
}

function inHand(offcuts: readonly Offcut[], limits: EndLimits): readonly Offcut[] {
  if (offcuts.length <= Math.min(mostOffcuts, mostStrips)) return offcuts
  const isStrip = ({ low, high }: Offcut) => high - low < limits.boardWidth
  const longest = (some: Offcut[], most: number) =>
    some.sort((a, b) => lengthOf(b) - lengthOf(a)).slice(0, most)
  const keeps = new Set([
    ...longest(
      offcuts.filter((offcut) => !isStrip(offcut)),
      mostOffcuts,
    ),
    ...longest(offcuts.filter(isStrip), mostStrips),
  ])
  return offcuts.filter((offcut) => keeps.has(offcut))
}

/** Length of board that offcuts can still stand for, mm: no more than is still to be laid, strips no more than is still wanted of them. */
function worthOf(offcuts: readonly Offcut[], demand: StripDemand, limits: EndLimits): Mm {
  const { boardLength, boardWidth, leastEnd } = limits
  let full = 0
  let grooved = 0
  let tongued = 0
  for (const { from, to, low, high } of offcuts) {
    const length = to - from
    if ((from !== 0 && to !== boardLength) || length < leastEnd) continue
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
