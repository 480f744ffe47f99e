import type { Mm } from "../../../kernels/units.ts"
import type { Offcut, Stretch } from "./boards.ts"
import type { PackedLength } from "./packs.ts"
import type { Profile } from "./profile.ts"

/** A stretch of one row from wall to wall, to be filled with boards, left to right. */
export interface Run {
  row: number
  /** `4`, or `4a`, `4b` where a row is broken. */
  name: string
  left: Mm
  right: Mm
  /** How far it reaches across the row; null where it fills it. */
  profile: Profile
}

/** What the boards and the rules allow, mm. */
export interface EndLimits {
  /** The longest board. */
  boardLength: Mm
  /** Every length that a pack holds, where it holds several. */
  mix?: readonly PackedLength[]
  boardWidth: Mm
  kerf: Mm
  /** Least length of a piece that begins or ends a jointed run. */
  leastEnd: Mm
  /** Least distance between end joints of neighbouring rows. */
  stagger: Mm
}

/** What a piece does in its run: begin it, lie whole between, end it, or span it from wall to wall. */
export type Role = "start" | "whole" | "finish" | "single"

/** A piece of a run: where it lies, and of which board it is cut. */
export interface CutPiece extends Stretch {
  left: Mm
  right: Mm
  role: Role
  /** Mark of the offcut it comes from, or null for a fresh board. */
  source: string | null
}

/** All runs filled. */
export interface EndPlan {
  /** Pieces of each run, in the order of the runs, left to right. */
  pieces: CutPiece[][]
  boards: number
  /** Length of each board, in the order of their numbers, mm. */
  lengths: Mm[]
  /** No plan that keeps the rules takes fewer boards; of boards of several lengths, fewer packs. */
  bound: number
  /** Full-width offcuts left at the end; strips that no row takes are thrown away. */
  offcuts: Offcut[]
  cuts: number
  /** Breaches of stagger and least end that could not be avoided, mm over all. */
  breach: Mm
}

/** Lengths that differ by less are the same, mm. */
export const same: Mm = 0.01
