import type { Mm } from "../../../kernels/units.ts"
import { lengthOf, type Offcut, type Stretch, serves } from "./boards.ts"

/** A stretch of one row from wall to wall, to be filled with boards, left to right. */
export interface Run {
  row: number
  /** `4`, or `4a`, `4b` where a row is broken. */
  name: string
  left: Mm
  right: Mm
}

/** What the boards and the rules allow, mm. */
export interface EndLimits {
  boardLength: Mm
  kerf: Mm
  /** Least length of a piece that begins or ends a jointed run. */
  leastEnd: Mm
  /** Least distance between end joints of neighbouring rows. */
  stagger: Mm
}

/** A piece of a run: where it lies, and of which board it is cut. */
export interface CutPiece extends Stretch {
  left: Mm
  right: Mm
  role: "start" | "whole" | "finish" | "single"
  /** Mark of the offcut it comes from, or null for a fresh board. */
  source: string | null
}

/** All runs filled. */
export interface EndPlan {
  /** Pieces of each run, in the order of the runs, left to right. */
  pieces: CutPiece[][]
  boards: number
  offcuts: Offcut[]
  cuts: number
  /** Breaches of stagger and least end that could not be avoided, mm over all. */
  breach: Mm
}

/** A length taken from a fresh board or an offcut. */
interface Taken extends Stretch {
  source: string | null
}

/** How one run is filled, told shortly: many are tried for each that is kept. */
interface Filling {
  run: Run
  start: Taken
  startLength: Mm
  /** Whole boards between, numbered from the first. */
  wholes: number
  firstWhole: number
  /** None where one piece spans the run. */
  finish: Taken | null
}

/** A partly laid floor. */
interface State {
  before: State | null
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

/** States kept after each run: so many, or in small rooms so many over all runs. More find better plans and take longer. */
const leastBreadth = 8
const breadthOverRuns = 250
/** Lengths of fresh starters that are tried: the range between least end and whole board in so many steps. */
const starterSteps = 10
/** Offcuts kept in hand: what nobody could keep in order on site is not planned with. */
const mostOffcuts = 10
/** Offcuts shorter than this are thrown away, mm. */
const shortestKept: Mm = 80
/** What an offcut is worth against a fresh board of its length. */
const offcutWorth = 0.9
/** Weight of a breach against wasted length: nothing that can be avoided is worth it. */
const breachWeight = 1000
/** Joints nearer than this to the joint two rows back, or to a steady step, look like a pattern, mm. */
const patternReach: Mm = 40
/** What a pattern, and a stagger of less than twice the least, weigh against wasted length, mm. */
const patternWeight: Mm = 40
const nearStaggerWeight = 0.1
/** Lengths that differ by less are the same, mm. */
const same: Mm = 0.01

/**
 * Fills runs with boards: few boards first, then few cuts, then joints spread well apart. A search that keeps the best few part-laid
 * floors after each run; it gives a good plan, not a proven one.
 * Edges are kept as they are: what a finish leaves has the right factory end and only starts a row, what a starter leaves has the left
 * one and only ends a row, what has two cut ends only spans from wall to wall.
 * @param narrow states kept after each run for a quick, rough look
 */
export function fillRuns(runs: readonly Run[], limits: EndLimits, narrow?: number): EndPlan {
  const breadth = narrow ?? Math.max(leastBreadth, Math.floor(breadthOverRuns / Math.max(1, runs.length)))
  let states: State[] = [emptyFloor()]
  for (const run of runs) {
    const next = states.flatMap((state) => fillings(inRow(state, run.row), run, limits))
    states = bestOf(next, breadth)
  }
  const best = states.reduce((a, b) => (finalOrder(a, b) <= 0 ? a : b))
  return planOf(best, limits.boardLength)
}

function emptyFloor(): State {
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

function inRow(state: State, row: number): State {
  if (row === state.row) return state
  const followed = row === state.row + 1
  return {
    ...state,
    before: state.before,
    row,
    joints: [],
    last: followed ? state.joints : [],
    secondLast: followed ? state.last : [],
  }
}

function fillings(state: State, run: Run, limits: EndLimits): State[] {
  const length = run.right - run.left
  const found: State[] = []
  if (length <= limits.boardLength + same) found.push(...singles(state, run, limits))
  if (length >= 2 * limits.leastEnd || found.length === 0) {
    const starts = startLengths(state, length, limits)
    const good = starts.filter((start) => keepsRules(start, state, run, limits))
    for (const start of good.length > 0 ? good : starts) found.push(jointed(state, run, start, limits))
  }
  return found
}

/** True if a starter of this length leaves both ends long enough and every joint far enough from the last row's. */
function keepsRules(start: Mm, state: State, run: Run, limits: EndLimits): boolean {
  const { boardLength, leastEnd, stagger } = limits
  if (start < leastEnd - same) return false
  let at = run.left + start
  for (; ; at += boardLength) {
    for (const joint of state.last) if (Math.abs(joint - at) < stagger) return false
    if (run.right - at <= boardLength + same) return run.right - at >= leastEnd - same
  }
}

/** One piece from wall to wall: of the shortest offcut that does, or of a fresh board cut at either end. */
function singles(state: State, run: Run, limits: EndLimits): State[] {
  const length = Math.min(run.right - run.left, limits.boardLength)
  const filling = (start: Taken): Filling => {
    return { run, start, startLength: run.right - run.left, wholes: 0, firstWhole: 0, finish: null }
  }
  const stock = new Stock(state, run, limits)
  const used = stock.shortest(length, null)
  if (used) return [stock.laid(filling(stock.cutFrom(used, length, "left")), [])]
  const states = [stock.laid(filling(stock.fresh(length, "left")), [])]
  if (length < limits.boardLength - same) {
    const other = new Stock(state, run, limits)
    states.push(other.laid(filling(other.fresh(length, "right")), []))
  }
  return states
}

/** Starter lengths worth trying: offcuts as they are, cuts that make a finisher fit, and a spread of fresh cuts. */
function startLengths(state: State, length: Mm, limits: EndLimits): Mm[] {
  const { boardLength, leastEnd, kerf } = limits
  const tried = new Set<Mm>()
  const add = (start: Mm) => {
    if (start > same && start <= boardLength && start < length) tried.add(start)
  }
  add(boardLength)
  const rest = length % boardLength
  for (const offcut of state.offcuts) {
    const role = serves(offcut, boardLength)
    if (role === "starter") add(lengthOf(offcut))
    if (role === "finisher")
      for (const start of complements(length, lengthOf(offcut), boardLength)) add(start)
  }
  add(rest / 2)
  for (const start of complements(length, leastEnd, boardLength)) add(start)
  if (rest + kerf <= boardLength) add(rest - leastEnd)
  const span = boardLength - leastEnd
  for (let step = 0; step < starterSteps; step++) add(Math.round(leastEnd + (span * step) / starterSteps))
  return [...tried]
}

function complements(length: Mm, finish: Mm, boardLength: Mm): Mm[] {
  const start = (((length - finish) % boardLength) + boardLength) % boardLength
  return start < same ? [] : [start]
}

function jointed(state: State, run: Run, startLength: Mm, limits: EndLimits): State {
  const { boardLength, leastEnd } = limits
  const stock = new Stock(state, run, limits)
  const start = stock.take(startLength, "right")
  const joints = [run.left + startLength]
  while (run.right - joints.at(-1)! > boardLength + same) joints.push(joints.at(-1)! + boardLength)
  const wholes = joints.length - 1
  const firstWhole = stock.wholeBoards(wholes)
  const finishLength = Math.min(run.right - joints.at(-1)!, boardLength)
  const finish = stock.take(finishLength, "left")
  const shortBy = Math.max(0, leastEnd - startLength) + Math.max(0, leastEnd - finishLength)
  return stock.laid({ run, start, startLength, wholes, firstWhole, finish }, joints, shortBy)
}

/** Boards and offcuts in hand while one run is filled. */
class Stock {
  readonly #state: State
  readonly #run: Run
  readonly #limits: EndLimits
  #offcuts: Offcut[]
  #boards: number
  #cuts = 0

  constructor(state: State, run: Run, limits: EndLimits) {
    this.#state = state
    this.#run = run
    this.#limits = limits
    this.#offcuts = [...state.offcuts]
    this.#boards = state.boards
  }

  /** A starter (keeping its right factory end) or finisher (the left): of the shortest offcut that does, or of a fresh board. */
  take(length: Mm, keep: "left" | "right"): Taken {
    const used = this.shortest(length, keep === "right" ? "starter" : "finisher")
    return used ? this.cutFrom(used, length, keep) : this.fresh(length, keep)
  }

  /** The shortest offcut that is long enough and serves (null: whatever it serves as). */
  shortest(length: Mm, as: "starter" | "finisher" | null): Offcut | undefined {
    let best: Offcut | undefined
    for (const offcut of this.#offcuts) {
      if (lengthOf(offcut) < length - same) continue
      if (as && serves(offcut, this.#limits.boardLength) !== as) continue
      if (!best || lengthOf(offcut) < lengthOf(best)) best = offcut
    }
    return best
  }

  /** A length cut from an offcut, keeping its left or right end. */
  cutFrom(offcut: Offcut, length: Mm, keep: "left" | "right"): Taken {
    this.#offcuts = this.#offcuts.filter((other) => other !== offcut)
    return this.#cut(offcut, length, keep, offcut.mark)
  }

  /** A length cut from a fresh board, keeping its left or right factory end. */
  fresh(length: Mm, keep: "left" | "right"): Taken {
    this.#boards++
    return this.#cut({ board: this.#boards, from: 0, to: this.#limits.boardLength }, length, keep, null)
  }

  /** So many uncut boards; gives the number of the first. */
  wholeBoards(count: number): number {
    this.#boards += count
    return this.#boards - count + 1
  }

  #cut(stock: Stretch, length: Mm, keep: "left" | "right", source: string | null): Taken {
    const { board, from, to } = stock
    if (to - from - length <= same) return { board, from, to, source }
    this.#cuts++
    const { kerf } = this.#limits
    if (keep === "left") {
      this.#keep(board, from + length + kerf, to)
      return { board, from, to: from + length, source }
    }
    this.#keep(board, from, to - length - kerf)
    return { board, from: to - length, to, source }
  }

  #keep(board: number, from: Mm, to: Mm): void {
    if (to - from < shortestKept) return
    const role = serves({ board, from, to }, this.#limits.boardLength)
    const letter = role === "starter" ? "R" : role === "finisher" ? "L" : "M"
    const mark = `${this.#run.name}${letter}`
    const again = letter === "M" && this.#offcuts.some((offcut) => offcut.mark === mark)
    this.#offcuts.push({ board, from, to, mark: again ? `${mark}2` : mark })
  }

  /** The floor with a run filled so. */
  laid(filling: Filling, joints: readonly Mm[], shortBy = 0): State {
    const state = this.#state
    const { stagger, boardLength, leastEnd } = this.#limits
    const near = nearest(joints, state.last)
    const breach = state.breach + shortBy + (near < stagger ? stagger - near : 0)
    const looks = state.looks + patterns(joints, state) + Math.max(0, 2 * stagger - near) * nearStaggerWeight
    const offcuts = this.#offcuts.length > mostOffcuts ? longestOf(this.#offcuts) : this.#offcuts
    let worth = 0
    for (const offcut of offcuts) {
      const role = serves(offcut, boardLength)
      if (role !== "wall-to-wall" && lengthOf(offcut) >= leastEnd) worth += lengthOf(offcut)
    }
    const score = this.#boards * boardLength - worth * offcutWorth + breach * breachWeight + looks
    return {
      before: state,
      filling,
      offcuts,
      boards: this.#boards,
      cuts: state.cuts + this.#cuts,
      row: state.row,
      joints: state.joints.length > 0 ? [...state.joints, ...joints] : joints,
      last: state.last,
      secondLast: state.secondLast,
      breach,
      looks,
      score,
    }
  }
}

function longestOf(offcuts: readonly Offcut[]): Offcut[] {
  const kept = new Set([...offcuts].sort((a, b) => lengthOf(b) - lengthOf(a)).slice(0, mostOffcuts))
  return offcuts.filter((offcut) => kept.has(offcut))
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

function bestOf(states: readonly State[], breadth: number): State[] {
  const ranked = [...states].sort((a, b) => a.score - b.score || a.cuts - b.cuts)
  const kept: State[] = []
  const seen = new Set<string>()
  for (const state of ranked) {
    const key = sameness(state)
    if (seen.has(key)) continue
    seen.add(key)
    kept.push(state)
    if (kept.length === breadth) break
  }
  return kept
}

/** States with the same joints in the last row and the same offcuts go on alike; only the better is kept. */
function sameness(state: State): string {
  const offcuts = state.offcuts.map((offcut) => Math.round(lengthOf(offcut))).sort((a, b) => a - b)
  return `${state.joints.map(Math.round).join()}|${offcuts.join()}`
}

function finalOrder(a: State, b: State): number {
  return a.breach - b.breach || a.boards - b.boards || a.cuts - b.cuts || a.looks - b.looks
}

function planOf(state: State, boardLength: Mm): EndPlan {
  const pieces: CutPiece[][] = []
  for (let at: State | null = state; at; at = at.before)
    if (at.filling) pieces.unshift(piecesOf(at.filling, boardLength))
  return { pieces, boards: state.boards, offcuts: [...state.offcuts], cuts: state.cuts, breach: state.breach }
}

function piecesOf(filling: Filling, boardLength: Mm): CutPiece[] {
  const { run, start, startLength, wholes, firstWhole, finish } = filling
  if (!finish) return [{ ...start, left: run.left, right: run.right, role: "single" }]
  const first = run.left + startLength
  const middle = Array.from(
    { length: wholes },
    (_, index): CutPiece => ({
      board: firstWhole + index,
      from: 0,
      to: boardLength,
      source: null,
      left: first + index * boardLength,
      right: first + (index + 1) * boardLength,
      role: "whole",
    }),
  )
  const last = middle.at(-1)?.right ?? first
  return [
    { ...start, left: run.left, right: first, role: "start" },
    ...middle,
    { ...finish, left: last, right: run.right, role: "finish" },
  ]
}
