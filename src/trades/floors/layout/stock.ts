import type { Mm } from "../../../kernels/units.ts"
import { lengthOf, markOf, type Offcut, type Stretch } from "./boards.ts"
import { type EndLimits, type Role, type Run, same } from "./end-plan.ts"
import { freshLength, type PackedLength } from "./packs.ts"
import { type Need, needOf } from "./profile.ts"

/** A length taken from a fresh board or an offcut. */
export interface Taken extends Stretch {
  source: string | null
  left: Mm
  right: Mm
  role: Role
}

/** Where a piece lies in its run, and what it does there. */
export interface Place {
  left: Mm
  right: Mm
  role: Role
}

/** How a piece is taken where there is a choice. */
export interface Choice {
  /** A fresh board though an offcut would do. */
  fresh?: boolean
  /** A fresh board of the longest length still in an opened pack, not the shortest that does. */
  longest?: boolean
  /** A rip first along the whole stock, then a cut across; else the cut first. */
  ripFirst?: boolean
  /** A cut across first, longer than the piece, then the rip, then the cut to length. */
  firstCut?: Mm
  /** A wall-to-wall piece cut off the right end, not the left. */
  fromRight?: boolean
  /** A wall-to-wall piece cut out of the middle: so much is left on its left. */
  leave?: Mm
}

/** Least widths that strips are still wanted in, by the edge they keep; infinite where none is. */
export interface StripsWanted {
  groove: Mm
  tongue: Mm
}

/** What boards there are, and what of them is still wanted. */
export type StockLimits = EndLimits & { lengths: readonly PackedLength[]; strips: StripsWanted }

/** Offcuts shorter than this are thrown away, mm. */
const shortestKept: Mm = 80

/** Boards and offcuts in hand while one run is filled. */
export class Stock {
  readonly #run: Run
  readonly #limits: StockLimits
  readonly #wanted: StripsWanted
  readonly #named: boolean
  offcuts: Offcut[]
  boards: number
  /** Fresh boards taken so far, by length. */
  readonly taken: number[]
  cuts = 0

  /** @param named whether offcuts are marked: a search that only counts leaves marks out */
  constructor(
    hand: { offcuts: readonly Offcut[]; boards: number; taken: readonly number[] },
    run: Run,
    { limits, named }: { limits: StockLimits; named: boolean },
  ) {
    this.#named = named
    this.offcuts = [...hand.offcuts]
    this.boards = hand.boards
    this.taken = [...hand.taken]
    this.#run = run
    this.#limits = limits
    this.#wanted = limits.strips
  }

  /** A piece for a place: of the offcut that wastes least, or of a fresh board. */
  take(place: Place, choice: Choice = {}): Taken {
    const { boardLength, boardWidth } = this.#limits
    const need = needOf(this.#run.profile, boardWidth, place)
    const length = Math.min(place.right - place.left, boardLength)
    const offcut = choice.fresh ? undefined : this.#best(length, place.role, need)
    if (offcut) this.offcuts = this.offcuts.filter((other) => other !== offcut)
    let stock: Stretch = offcut ?? this.#fresh(length, place.role, choice.longest ?? false)
    const keep = place.role === "start" || (place.role === "single" && choice.fromRight) ? "right" : "left"
    const first = choice.firstCut !== undefined && choice.firstCut > length ? choice.firstCut : null
    if (choice.leave !== undefined) stock = this.#leaving(stock, choice.leave, length)
    const cut = this.#cut(stock, { length, keep, need, first: choice.ripFirst ? lengthOf(stock) : first })
    const { left, right, role } = place
    const { board, room, of, from, to, low, high } = cut
    return { board, room, of, from, to, low, high, left, right, role, source: offcut?.mark ?? null }
  }

  /** A board of a fresh pack: of the lengths still in opened packs, or else of any, the shortest that holds the piece. */
  #fresh(length: Mm, role: Role, longest: boolean): Stretch {
    const { boardWidth, lengths } = this.#limits
    const of = freshLength(lengths, this.taken, { length, isWhole: role === "whole", longest })
    this.taken[of]!++
    this.boards++
    const whole = lengths[of]!.length
    return { board: this.boards, room: null, of: whole, from: 0, to: whole, low: 0, high: boardWidth }
  }

  /** Strips before full widths, this room's before those of others, then the shortest that is long enough. */
  #best(length: Mm, role: Role, need: Need): Offcut | undefined {
    let best: Offcut | undefined
    for (const offcut of this.offcuts) {
      if (this.#does(offcut, length, role, need) && (!best || comesBefore(offcut, best))) best = offcut
    }
    return best
  }

  #does(offcut: Offcut, length: Mm, role: Role, need: Need): boolean {
    if (lengthOf(offcut) < length - same || widthOf(offcut) < need.width - same) return false
    const { boardWidth } = this.#limits
    if ((role === "start" || role === "whole") && offcut.to !== offcut.of) return false
    if ((role === "finish" || role === "whole") && offcut.from !== 0) return false
    if (role === "whole" && lengthOf(offcut) > length + same) return false
    return !(need.groove && offcut.low !== 0) && !(need.tongue && offcut.high !== boardWidth)
  }

  /** What is left of a stock once so much is cut off its left end; all of it where the piece needs that. */
  #leaving(stock: Stretch, leave: Mm, length: Mm): Stretch {
    const rest = lengthOf(stock) - leave - this.#limits.kerf
    return rest < length - same ? stock : this.#across(stock, rest, "right")
  }

  /** @param how.first length cut off before the rip, where it is longer than the piece; null: the piece is cut to length first */
  #cut(stock: Stretch, how: { length: Mm; keep: "left" | "right"; need: Need; first: Mm | null }): Stretch {
    if (how.first === null) return this.#rip(this.#across(stock, how.length, how.keep), how.need)
    const ripped = this.#rip(this.#across(stock, how.first, how.keep), how.need)
    return this.#across(ripped, how.length, how.keep)
  }

  #across(stock: Stretch, length: Mm, keep: "left" | "right"): Stretch {
    if (lengthOf(stock) - length <= same) return stock
    this.cuts++
    const { kerf } = this.#limits
    const { board, room, of, from, to, low, high } = stock
    if (keep === "left") {
      this.#keep({ board, room, of, from: from + length + kerf, to, low, high })
      return { board, room, of, from, to: from + length, low, high }
    }
    this.#keep({ board, room, of, from, to: to - length - kerf, low, high })
    return { board, room, of, from: to - length, to, low, high }
  }

  /** A strip of the width needed, with the edge needed; the other strip is kept if any later row wants one. */
  #rip(stock: Stretch, need: Need): Stretch {
    if (widthOf(stock) - need.width <= same) return stock
    this.cuts++
    const { kerf } = this.#limits
    const { board, room, of, from, to, low, high } = stock
    if (need.tongue) {
      this.#keep({ board, room, of, from, to, low, high: high - need.width - kerf })
      return { board, room, of, from, to, low: high - need.width, high }
    }
    this.#keep({ board, room, of, from, to, low: low + need.width + kerf, high })
    return { board, room, of, from, to, low, high: low + need.width }
  }

  #keep(left: Stretch): void {
    const { board, room, of, from, to, low, high } = left
    if (to - from < shortestKept) return
    const { boardWidth } = this.#limits
    const groove = low === 0
    const tongue = high === boardWidth
    if (!groove && !tongue) return
    if (!(groove && tongue)) {
      const least = groove ? this.#wanted.groove : this.#wanted.tongue
      if (high - low < least - same) return
    }
    const mark = this.#named ? this.#marked(markOf(this.#run.name, left, boardWidth)) : ""
    this.offcuts.push({ board, room, of, from, to, low, high, mark })
  }

  #marked(mark: string): string {
    const again = this.#given.filter((other) => other === mark).length
    this.#given.push(mark)
    return again > 0 ? `${mark}${again + 1}` : mark
  }

  /** Marks given in this run so far. */
  readonly #given: string[] = []
}

/** True if the first of two offcuts that both do is the better to cut. */
function comesBefore(a: Offcut, b: Offcut): boolean {
  if (Math.abs(widthOf(a) - widthOf(b)) > same) return widthOf(a) < widthOf(b)
  if ((a.room === null) !== (b.room === null)) return a.room === null
  return lengthOf(a) < lengthOf(b)
}

function widthOf(stretch: Stretch): Mm {
  return stretch.high - stretch.low
}
