import type { Mm } from "../units.ts"

/** A length that can be bought: `cost` is a whole number (pence, or any unit), `available` how many there are (no limit if absent). */
export interface StockLength {
  id: string
  length: Mm
  cost: number
  available?: number
}

/** Offcuts already on the rack: they cost nothing and are sawn first. */
export interface OffcutInHand {
  id: string
  length: Mm
  available: number
}

/** Pieces wanted of one length under one name. */
export interface CuttingItem {
  id: string
  length: Mm
  count: number
}

/** One saw's work in one profile. All lengths in mm, whole or in tenths. */
export interface CuttingProblem {
  /** Width of the cut, lost between neighbouring pieces and at the last cut if anything is left. */
  kerf: Mm
  stocks: StockLength[]
  offcutsInHand?: OffcutInHand[]
  /** Squared off each of the two factory ends of a bought length; offcuts in hand are square already. */
  endTrim?: Mm
  items: CuttingItem[]
  /** Least length of an offcut worth keeping; without it every offcut counts. */
  keepFrom?: Mm
  /** How hard to search, as time on an ordinary machine; turned into a count of steps so that results never depend on the clock. */
  limitMs?: number
}

/** One length on the saw. `length = 2 x endTrim + sum(pieces) + kerfs + offcut`, to the tenth of a millimetre. */
export interface CutBar {
  stockId: string
  length: Mm
  /** Cost of this length; 0 for an offcut in hand. */
  cost: number
  /** True if it comes off the rack, not from the order. */
  inHand: boolean
  /** Item ids in sawing order, longest first. */
  pieces: string[]
  /** All that the saw turns to dust on this length. */
  kerfs: Mm
  /** Squared off each factory end. */
  endTrim: Mm
  /** What is left in one piece after the last cut. */
  offcut: Mm
  /** True if the offcut is long enough to keep. */
  keep: boolean
}

/** Pieces that the plan could not place, and why. */
export interface Unplaced {
  itemId: string
  length: Mm
  count: number
  reason: "longer-than-any-stock" | "stock-run-out"
}

/** A plan for the saw, least cost first, then fewest bought lengths, then the largest reusable offcut. */
export interface CutPlan {
  /** Offcuts in hand first, then bought lengths, longest first; equal bars stand together. */
  bars: CutBar[]
  /** Sum over the bars. */
  cost: number
  /** Number of bought lengths. */
  lengths: number
  /** Proved: no plan for the same pieces costs less than this. */
  bound: number
  /** True only where `cost` equals `bound` and, if stock ran out, no plan places the rest with fewer missing lengths. */
  proven: boolean
  /** True only where it is proved as well that no plan of the same cost buys fewer lengths. */
  fewestProven: boolean
  unplaced: Unplaced[]
}
