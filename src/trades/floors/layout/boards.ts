import type { Mm } from "../../../kernels/units.ts"

/**
 * A rectangle of one board: along it from its left factory end, across it from its grooved edge.
 * From 0 it has the left factory end, to the board's length the right one; low 0 keeps the groove, high at the board's width the tongue.
 */
export interface Stretch {
  /** Which board, from 1, in the order they are first cut or laid; of the room that opened it. */
  board: number
  /** The room that opened its board, where that is another than the one it lies in; else null. */
  room: string | null
  /** Length of its whole board, mm. */
  of: Mm
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

/** Which of the four factory edges a stretch still has. @param width covering width of the boards, mm */
export function kept(stretch: Stretch, width: Mm): Kept {
  return {
    left: stretch.from === 0,
    right: stretch.to === stretch.of,
    groove: stretch.low === 0,
    tongue: stretch.high === width,
  }
}

/** The mark of what a cut in a row leaves: its row, `G` or `T` for a strip by the edge it kept, and its ends. */
export function markOf(row: string, stretch: Stretch, width: Mm): string {
  const { left, right, groove, tongue } = kept(stretch, width)
  const strip = groove && tongue ? "" : groove ? "G" : "T"
  const ends = left && right ? "W" : right ? "R" : left ? "L" : "M"
  return `${row}${strip}${ends}`
}

/** True for a mark that a cut in this row gives. */
export function isMarkOf(mark: string, row: string): boolean {
  return mark.startsWith(row) && /^[GT]?[LRMW]\d*$/.test(mark.slice(row.length))
}
