import type { Mm } from "../../../kernels/units.ts"

/** Length and covering width of one board, mm. */
export interface BoardSize {
  length: Mm
  width: Mm
}

/**
 * A rectangle of one board: along it from its left factory end, across it from its grooved edge.
 * From 0 it has the left factory end, to the board's length the right one; low 0 keeps the groove, high at the board's width the tongue.
 */
export interface Stretch {
  /** Which board, from 1, in the order they are first cut or laid. */
  board: number
  from: Mm
  to: Mm
  low: Mm
  high: Mm
}

/** A stretch left over, with the mark to write on it. */
export interface Offcut extends Stretch {
  /**
   * Row whose cut left it, and what it kept: `4R` the right factory end, `4L` the left, `4M` neither, `4W` both;
   * `1GR` and so on: a strip that kept the groove, `1TR` the tongue.
   */
  mark: string
}

/** Factory edges that a stretch still has. */
export interface Kept {
  left: boolean
  right: boolean
  groove: boolean
  tongue: boolean
}

/** Length of a stretch, mm. */
export function lengthOf(stretch: Stretch): Mm {
  return stretch.to - stretch.from
}

/** Area of a stretch, mm2. */
export function areaOf(stretch: Stretch): number {
  return (stretch.to - stretch.from) * (stretch.high - stretch.low)
}

/** Which of the four factory edges a stretch still has. */
export function kept(stretch: Stretch, board: BoardSize): Kept {
  return {
    left: stretch.from === 0,
    right: stretch.to === board.length,
    groove: stretch.low === 0,
    tongue: stretch.high === board.width,
  }
}

/** The mark of what a cut in a row leaves: its row, `G` or `T` for a strip by the edge it kept, and its ends. */
export function markOf(row: string, stretch: Stretch, board: BoardSize): string {
  const { left, right, groove, tongue } = kept(stretch, board)
  const strip = groove && tongue ? "" : groove ? "G" : "T"
  const ends = left && right ? "W" : right ? "R" : left ? "L" : "M"
  return `${row}${strip}${ends}`
}

/** True for a mark that a cut in this row gives. */
export function isMarkOf(mark: string, row: string): boolean {
  return mark.startsWith(row) && /^[GT]?[LRMW]\d*$/.test(mark.slice(row.length))
}
