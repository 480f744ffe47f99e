import type { Point } from "../polygon/point.ts"
import type { Degrees, Mm } from "../units.ts"

/** One straight run of an outline walked clockwise, inside on the right hand: its taped length, and the turn at its end. */
export interface Run {
  length: Mm
  /** Right positive, left negative; as assumed (90, 45) unless measured. */
  turn: Degrees
  /** True if the turn was measured; an assumed turn bends first. */
  measured?: boolean
}

/** A taped length straight across between two corners; corner i is where run i starts, from 0. */
export interface Check {
  from: number
  to: number
  length: Mm
}

/** How far each kind of measurement is trusted, either way. */
export interface Tolerances {
  /** A taped run or check; a run is never moved further than this. */
  length: Mm
  /** A turn that was only assumed. */
  assumedTurn: Degrees
  /** A turn that was measured. */
  measuredTurn: Degrees
  /**
   * A shape that some length leaves free still counts as fixed if no distance between corners can vary by more than this
   * while assumed turns keep their tolerance. Left out: only lengths, checks and measured turns fix a shape.
   */
  shape?: Mm
}

/** An outline as measured. */
export interface OutlineSurvey {
  runs: readonly Run[]
  checks: readonly Check[]
  tolerances: Tolerances
}

/** Which measurement: run i, turn at the end of run i, or check i, from 0. */
export interface MeasurementRef {
  kind: "run" | "turn" | "check"
  index: number
}

/** One measurement against the outline found: mm for lengths, degrees for turns. */
export interface Residual extends MeasurementRef {
  /** As measured or assumed. */
  read: number
  /** As it is in the outline found. */
  found: number
  /** Found less read. */
  residual: number
  /** Within its tolerance. */
  within: boolean
}

/** What may have happened to a measurement. */
export type Mishap = "digits swapped" | "100 mm slip" | "1000 mm slip" | "left for right" | "misread"

/** A measurement that, mended alone, would make all others agree. */
export interface Suspect extends MeasurementRef {
  mishap: Mishap
  read: number
  /** What it should read: a whole slip mended, or for a plain misread the figure that fits best, rounded to 1 mm or 0.1 degree. */
  meant: number
  /** Unlikeliness of all that remains after the mend: a sum of squares, smaller is likelier. */
  cost: number
  /** True for every suspect that explains it as well as the first. */
  likeliest: boolean
}

/** The gap of a walk that should have come back to its start. */
export interface Misclosure {
  x: Mm
  y: Mm
  /** Length of the gap. */
  gap: Mm
  /** Sum of all turns less a full circle. */
  turn: Degrees
}

/** The outline that fits the measurements best. */
export interface OutlineSolution {
  /** Corner i is where run i starts: corner 0 at the origin, run 0 along x, y up, inside below it; walked clockwise. */
  corners: Point[]
  /** Length of each run in the outline found; within tolerance of its taped length whenever the outline closes. */
  lengths: Mm[]
  /** Turn at the end of each run in the outline found. */
  turns: Degrees[]
  /** Runs, then turns, then checks, in their order. */
  residuals: Residual[]
  /** The walk as read, before anything was bent. */
  misclosure: Misclosure
  method: "least bending" | "compass rule"
  /** False if no outline closes with the taped lengths at all: the corners are then the open walk as read. */
  closes: boolean
  /** Closes, does not cross itself, and every measurement is within its tolerance. */
  ok: boolean
  /** Ways the shape could still move with every taped length and measured turn kept. */
  freedoms: number
  /** Most that a distance between two corners may vary while every turn keeps its tolerance, either way. */
  looseness: Mm
  /** True if what was measured fixes the shape; else it rests on assumed turns. */
  fixed: boolean
  /** The check lengths that would fix it, the most telling first; empty if it is fixed. */
  needs: { from: number; to: number }[]
  /** If not ok: what was most likely read wrong, likeliest first; empty if no single mend explains it. */
  suspects: Suspect[]
}
