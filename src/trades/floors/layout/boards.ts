import type { Mm } from "../../../kernels/units.ts"

/** A stretch of one board, from its left factory end: from 0 it has the left factory end, to the board's length the right one. */
export interface Stretch {
  /** Which board, from 1, in the order they are first cut or laid. */
  board: number
  from: Mm
  to: Mm
}

/** A stretch left over, with the mark to write on it. */
export interface Offcut extends Stretch {
  /** Row whose cut left it, and which end it kept: `4R` kept the right factory end, `4L` the left, `4M` neither. */
  mark: string
}

/** Length of a stretch, mm. */
export function lengthOf(stretch: Stretch): Mm {
  return stretch.to - stretch.from
}

/** What a stretch can serve as: `starter` begins a row, `finisher` ends one, `either` is a whole board, `wall-to-wall` has two cut ends. */
export function serves(
  stretch: Stretch,
  boardLength: Mm,
): "starter" | "finisher" | "either" | "wall-to-wall" {
  const left = stretch.from === 0
  const right = stretch.to === boardLength
  if (left && right) return "either"
  if (right) return "starter"
  return left ? "finisher" : "wall-to-wall"
}
