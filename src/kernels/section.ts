import type { Point } from "./polygon/point.ts"
import {
  figures,
  fitted,
  profileOf,
  type Reading,
  rank,
  residualOf,
  type SectionFigure,
  type SectionResidual,
} from "./section-shape.ts"
import type { Degrees, Mm } from "./units.ts"

/** One side of a room's section as taped: an upright wall, and over it a slope if the side has one. */
export interface SectionSide {
  /** False: the wall goes up to the flat ceiling. */
  sloped: boolean
  /** Height of the upright wall from the floor. */
  wall?: Mm
  /** Length along the slope. */
  slope?: Mm
  /** Pitch of the slope from the level. */
  pitch?: Degrees
}

/** A room's section square across its slopes, as taped: as many figures as were taken. */
export interface SectionSurvey {
  left: SectionSide
  right: SectionSide
  /** Width of the flat ceiling; 0 where there is none. */
  flat?: Mm
  /** Width of the floor. */
  floor?: Mm
  /** Height of the flat ceiling (or of the top of the slopes) from the floor. */
  ceiling?: Mm
  /** How far a taped length and a pitch are trusted, either way. */
  tolerances: { length: Mm; pitch: Degrees }
}

/** The section that fits the figures best. */
export interface SectionSolution {
  /** From the left foot up and over to the right foot: x across from the left wall, y height above the floor; empty if not fixed. */
  profile: Point[]
  residuals: SectionResidual[]
  /** Width of floor as read less slopes and flat ceiling as read, where all were taken: the closure error. */
  misclosure: Mm | null
  /** Enough figures to fix the section. */
  fixed: boolean
  /** If not fixed: figures any one of which would tell more. */
  needs: SectionFigure[]
  /** Fixed, and every figure within its tolerance. */
  ok: boolean
  /** If not ok: figures that, left out alone, make all others agree, with what they would read. */
  suspects: { figure: SectionFigure; read: number; meant: number }[]
}

/**
 * A sloping room's section from its taped figures, by least squares: each figure counts by its tolerance, so that closure error
 * is shared as each can bear it. The floor and the flat ceiling are level, walls upright; both slopes meet the flat at one height.
 */
export function solveSection(survey: SectionSurvey): SectionSolution {
  const readings = readingsOf(survey)
  const unknowns = unknownsOf(survey)
  const free = unknowns.length - rank(readings, unknowns)
  const misclosure = misclosureOf(survey)
  if (free > 0) {
    const needs = missing(survey).filter(
      (figure) => rank([...readings, { figure, read: 0, tolerance: 1 }], unknowns) > unknowns.length - free,
    )
    return { profile: [], residuals: [], misclosure, fixed: false, needs, ok: false, suspects: [] }
  }
  const shape = fitted(readings, unknowns)
  const residuals = readings.map((reading) => residualOf(shape, reading))
  const ok = residuals.every(({ within }) => within)
  const suspects = ok ? [] : suspectsOf(readings, unknowns)
  return { profile: profileOf(shape), residuals, misclosure, fixed: true, needs: [], ok, suspects }
}

function readingsOf({ left, right, flat, floor, ceiling, tolerances }: SectionSurvey): Reading[] {
  const taken: [SectionFigure, number | undefined][] = [
    ["left wall", left.wall],
    ["left slope", left.sloped ? left.slope : undefined],
    ["left pitch", left.sloped ? left.pitch : undefined],
    ["right wall", right.wall],
    ["right slope", right.sloped ? right.slope : undefined],
    ["right pitch", right.sloped ? right.pitch : undefined],
    ["flat", flat === 0 ? undefined : flat],
    ["floor", floor],
    ["ceiling", ceiling],
  ]
  return taken.flatMap(([figure, read]) => {
    const tolerance = figure.endsWith("pitch") ? tolerances.pitch : tolerances.length
    return read === undefined ? [] : [{ figure, read, tolerance }]
  })
}

/** Places in the shape that are not nothing from the start. */
function unknownsOf({ left, right, flat }: SectionSurvey): number[] {
  return [0, ...(left.sloped ? [1, 2] : []), ...(flat === 0 ? [] : [3]), ...(right.sloped ? [4, 5] : [])]
}

function missing(survey: SectionSurvey): SectionFigure[] {
  const taken = new Set(readingsOf(survey).map(({ figure }) => figure))
  return (Object.keys(figures) as SectionFigure[]).filter((figure) => {
    if (figure.startsWith("left ") && figure !== "left wall" && !survey.left.sloped) return false
    if (figure.startsWith("right ") && figure !== "right wall" && !survey.right.sloped) return false
    return !taken.has(figure) && !(figure === "flat" && survey.flat === 0)
  })
}

function suspectsOf(readings: readonly Reading[], unknowns: readonly number[]): SectionSolution["suspects"] {
  return readings.flatMap((left) => {
    const rest = readings.filter((reading) => reading !== left)
    if (rank(rest, unknowns) < unknowns.length) return []
    const shape = fitted(rest, unknowns)
    if (!rest.every((reading) => residualOf(shape, reading).within)) return []
    return [{ figure: left.figure, read: left.read, meant: figures[left.figure](shape) }]
  })
}

function misclosureOf({ left, right, flat, floor }: SectionSurvey): Mm | null {
  const sides = [left, right].map(({ sloped, slope, pitch }) => {
    if (!sloped) return 0
    return slope === undefined || pitch === undefined ? Number.NaN : slope * Math.cos((pitch * Math.PI) / 180)
  })
  const over = (floor ?? Number.NaN) - (flat ?? Number.NaN) - sides[0]! - sides[1]!
  return Number.isNaN(over) ? null : over
}
