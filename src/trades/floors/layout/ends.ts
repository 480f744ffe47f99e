import type { Mm } from "../../../kernels/units.ts"
import { lengthOf, type Offcut } from "./boards.ts"
import { fewestPossible } from "./bound.ts"
import { type CutPiece, type EndLimits, type EndPlan, type Run, same } from "./end-plan.ts"
import {
  emptyFloor,
  type Filling,
  finalOrder,
  inRow,
  type State,
  type StripDemand,
  sameness,
  type Weights,
  withRun,
} from "./floor-state.ts"
import { mixedPlaces } from "./mix.ts"
import { type PackedLength, packRun } from "./packs.ts"
import { leastNeeds } from "./profile.ts"
import { startLengths } from "./starts.ts"
import { type Choice, type Place, Stock, type StockLimits, type StripsWanted } from "./stock.ts"
import { type WorthLeaving, waysJointed, waysSingle, worthLeaving } from "./ways.ts"

/** How hard one pass of the search looks. */
interface Effort extends Weights {
  /** Only for floors of so few runs. */
  upTo: number
  /** Fillings laid over all runs, about; and the least states kept after each run. */
  fillings: number
  least: number
  /** Fresh starter lengths tried. */
  steps: number
  /** Whether pieces are tried from a fresh board too, where an offcut would do. */
  choices: boolean
  /** Whether each end piece's cuts are looked at by themselves. */
  piecewise: boolean
}

/** Floors of so few runs are small, and very small. */
const fewRuns = 6
const veryFewRuns = 4
const usual: Effort = {
  upTo: Number.POSITIVE_INFINITY,
  fillings: 8_000,
  least: 6,
  steps: 10,
  choices: false,
  piecewise: false,
  offcutWorth: 0.9,
  looks: 1,
}
const thorough: Effort = { ...usual, upTo: fewRuns, steps: 24, choices: true, piecewise: true }
/** Passes: the next is made only while boards stand above the bound. */
const passes: readonly Effort[] = [
  usual,
  { ...usual, choices: true, offcutWorth: 1 },
  { ...usual, steps: 16, offcutWorth: 0.8 },
  { ...usual, fillings: 16_000, steps: 24, choices: true, offcutWorth: 0.95 },
  { ...thorough, fillings: 60_000 },
  { ...thorough, upTo: veryFewRuns, fillings: 100_000, steps: 16, offcutWorth: 1, looks: 0 },
  { ...thorough, upTo: veryFewRuns, fillings: 100_000, steps: 48, offcutWorth: 1, looks: 0 },
]
/** Passes made with boards of several lengths: each has many times as many fillings. */
const passesOfMix = 3
/** The rough look at a setting of the rows. */
const rough: Effort = { ...usual, fillings: 0, least: 3, steps: 8 }
/** Fillings of one run from one state, about. */
const fillingsEach = 50
/** More states than this are never kept; so many times as many are gathered before the best are picked. */
const mostBreadth = 2000
const gathered = 4

/** Limits with what the runs themselves ask of strips. */
type Limits = StockLimits & { leaving: WorthLeaving }

/**
 * Fills runs with boards: few boards first, then few cuts, then joints spread well apart. A search that keeps the best few part-laid
 * floors after each run and looks harder while the result is above the bound; bounded and repeatable.
 * Edges are kept as they are: what a finish leaves has the right factory end and only starts a row, what a starter leaves has the left
 * one and only ends a row, what has two cut ends only spans from wall to wall. A strip ripped off keeps its groove or its tongue and
 * serves only where the other long edge lies at a wall.
 * Boards of several lengths are taken as packs hold them: few packs first, then little length.
 * @param options.quick one rough look, no bound
 * @param options.hand offcuts of other rooms, each with the room that opened its board; used only where boards are saved
 */
export function fillRuns(
  runs: readonly Run[],
  limits: EndLimits,
  { quick = false, hand = [] }: { quick?: boolean; hand?: readonly Offcut[] } = {},
): EndPlan {
  const lengths = limits.mix ?? [{ length: limits.boardLength, perPack: 1 }]
  const strips = stripsWanted(runs, limits)
  const own: Limits = { ...limits, lengths, strips, leaving: worthLeaving(runs, limits) }
  const demands = stripDemands(runs, limits)
  const ahead = runs.map((run, index) => ({ run, demand: demands[index]! }))
  const empty = emptyFloor(lengths)
  if (quick) return planOf(searched(empty, ahead, own, rough), ahead, own, 0)
  const leastWith = (some: readonly Offcut[]) =>
    limits.mix ? fewestPacks(runs, limits.mix, some) : fewestPossible(runs, limits, some)
  const alone = bestOf(empty, ahead, own, leastWith([]))
  const least = leastWith(hand)
  const shared = hand.length > 0 ? bestOf(emptyFloor(lengths, hand), ahead, own, least) : alone
  const isSaving = shared.breach <= alone.breach && Math.floor(shared.cost) < Math.floor(alone.cost)
  const best = isSaving ? shared : alone
  return planOf(best, ahead, own, best.breach <= same ? least : Math.min(least, Math.floor(best.cost)))
}

function bestOf(from: State, ahead: readonly Ahead[], limits: Limits, bound: number): State {
  let best: State | undefined
  const most = limits.mix ? passesOfMix : passes.length
  for (const effort of passes.slice(0, most).filter(({ upTo }) => ahead.length <= upTo)) {
    const found = searched(from, ahead, limits, effort)
    if (!best || finalOrder(found, best) < 0) best = found
    if (best.breach <= same && Math.floor(best.cost) <= bound) break
  }
  return best!
}

/** Packs of a mix that hold at least the length of all full rows, less what is in hand. */
function fewestPacks(runs: readonly Run[], mix: readonly PackedLength[], hand: readonly Offcut[]): number {
  const length = runs.reduce((sum, run) => sum + (run.profile ? 0 : run.right - run.left), 0)
  const inHand = hand.reduce((sum, offcut) => sum + lengthOf(offcut), 0)
  return Math.max(runs.length > hand.length ? 1 : 0, Math.ceil((length - inHand - same) / packRun(mix)))
}

/** A run, and what offcuts can still serve after it. */
interface Ahead {
  run: Run
  demand: StripDemand
}

function searched(from: State, ahead: readonly Ahead[], limits: Limits, effort: Effort): State {
  const each = Math.floor(effort.fillings / (fillingsEach * Math.max(1, ahead.length)))
  const breadth = Math.min(mostBreadth, Math.max(effort.least, each))
  let states: State[] = [from]
  for (const { run, demand } of ahead) {
    const best = new Best(breadth)
    for (const state of states) fillings(inRow(state, run.row), { run, demand }, { limits, effort, best })
    states = best.picked()
  }
  return states.reduce((a, b) => (finalOrder(a, b) <= 0 ? a : b))
}

/** The best so many of the states offered. */
class Best {
  readonly #breadth: number
  #states: State[] = []
  /** A state that scores more is not wanted. */
  most = Number.POSITIVE_INFINITY

  constructor(breadth: number) {
    this.#breadth = breadth
  }

  offer(state: State): void {
    this.#states.push(state)
    if (this.#states.length < 2 * gathered * this.#breadth) return
    this.#states = this.#pick(gathered * this.#breadth)
    if (this.#states.length === gathered * this.#breadth) this.most = this.#states.at(-1)!.score
  }

  /** Best first; of states that go on alike only the best. */
  picked(): State[] {
    return this.#pick(this.#breadth)
  }

  #pick(count: number): State[] {
    const ranked = this.#states.sort((a, b) => a.score - b.score || a.cuts - b.cuts)
    const kept: State[] = []
    const seen = new Set<string>()
    for (const state of ranked) {
      const key = sameness(state)
      if (seen.has(key)) continue
      seen.add(key)
      kept.push(state)
      if (kept.length === count) break
    }
    return kept
  }
}

function fillings(
  state: State,
  { run, demand }: Ahead,
  { limits, effort, best }: { limits: Limits; effort: Effort; best: Best },
): void {
  const length = run.right - run.left
  let isLaid = false
  const lay = (places: readonly Place[], choices: readonly Choice[]) => {
    const stock = new Stock(state, run, { limits, named: false })
    const used = places.map((place, index) => stock.take(place, choices[index]!).source !== null)
    const next = withRun(
      state,
      { stock, filling: { places, choices }, demand },
      { limits, effort, most: best.most },
    )
    if (next) best.offer(next)
    isLaid = true
    return used
  }
  const layAll = (places: readonly Place[], choices: readonly Choice[]) => {
    const used = lay(places, choices)
    if (!effort.choices || !used.includes(true)) return
    const freshAt = (which: (index: number) => boolean) =>
      lay(
        places,
        choices.map((choice, index) => (which(index) ? { ...choice, fresh: true } : choice)),
      )
    used.forEach((isUsed, index) => {
      if (isUsed) freshAt((other) => other === index)
    })
    if (used.indexOf(true) !== used.lastIndexOf(true)) freshAt(() => true)
  }
  const how = { demand, leaving: limits.leaving, hard: effort.piecewise }
  if (length <= limits.boardLength + same) {
    const single: Place = { left: run.left, right: run.right, role: "single" }
    for (const choice of waysSingle(run, how)) layAll([single], [choice])
  }
  if (length < 2 * limits.leastEnd && isLaid) return
  for (const places of placesJointed(state, run, limits, effort.steps)) {
    for (const choices of waysJointed(run, places, how)) {
      layAll(places, choices)
      if (limits.mix)
        layAll(
          places,
          choices.map((choice) => ({ ...choice, longest: true })),
        )
    }
  }
}

function placesJointed(state: State, run: Run, limits: Limits, steps: number): Place[][] {
  if (limits.mix) return mixedPlaces(state, run, limits, steps)
  return startLengths(state, run, limits, steps).map((start) => placesOf(run, start, limits.boardLength))
}

function placesOf(run: Run, start: Mm, boardLength: Mm): Place[] {
  const joints = [run.left + start]
  while (run.right - joints.at(-1)! > boardLength + same) joints.push(joints.at(-1)! + boardLength)
  const ends = [run.left, ...joints, run.right]
  return ends.slice(1).map((right, index): Place => {
    const role = index === 0 ? "start" : index === joints.length ? "finish" : "whole"
    return { left: ends[index]!, right, role }
  })
}

/** The least widths in which runs take strips with a groove and with a tongue. */
function stripsWanted(runs: readonly Run[], limits: EndLimits): StripsWanted {
  const wanted = { groove: Number.POSITIVE_INFINITY, tongue: Number.POSITIVE_INFINITY }
  for (const { need } of runs.flatMap((run) => needsOf(run, limits))) {
    if (need.groove && !need.tongue) wanted.groove = Math.min(wanted.groove, need.width)
    if (need.tongue && !need.groove) wanted.tongue = Math.min(wanted.tongue, need.width)
  }
  return wanted
}

/** After each run, the length still to come that offcuts can serve. */
function stripDemands(runs: readonly Run[], limits: EndLimits): StripDemand[] {
  const demands: StripDemand[] = []
  const still = { length: 0, groove: 0, tongue: 0 }
  for (const run of [...runs].reverse()) {
    demands.unshift({ ...still })
    still.length += run.right - run.left
    for (const { need, length } of needsOf(run, limits)) {
      if (!need.tongue) still.groove += length
      if (!need.groove) still.tongue += length
    }
  }
  return demands
}

function needsOf(run: Run, { boardWidth, leastEnd }: EndLimits) {
  return leastNeeds(run.profile, boardWidth, { left: run.left, right: run.right, leastEnd })
}

/** The search only counts; what it found is laid once more with a mark on every offcut. */
function planOf(found: State, ahead: readonly Ahead[], limits: Limits, bound: number): EndPlan {
  const fillings: Filling[] = []
  let first = found
  for (; first.before; first = first.before) if (first.filling) fillings.unshift(first.filling)
  let state = first
  const lengths: Mm[] = []
  const pieces = ahead.map(({ run, demand }, index): CutPiece[] => {
    const filling = fillings[index]!
    const stock = new Stock(state, run, { limits, named: true })
    const taken = filling.places.map((place, which) => {
      const piece = stock.take(place, filling.choices[which])
      if (piece.source === null) lengths.push(piece.of)
      return piece
    })
    state = withRun(
      inRow(state, run.row),
      { stock, filling, demand },
      { limits, effort: { offcutWorth: 1, looks: 1 }, most: Number.POSITIVE_INFINITY },
    )!
    return taken
  })
  const { boards, cuts, breach } = state
  const offcuts = state.offcuts.filter(({ low, high }) => high - low === limits.boardWidth)
  return { pieces, boards, lengths, bound, offcuts, cuts, breach }
}
