import { cosSin } from "../polygon/point.ts"
import type { Degrees, Mm } from "../units.ts"

/** One leg of a traverse: its length, and its heading in degrees anticlockwise from x. */
export interface Leg {
  length: Mm
  heading: Degrees
}

/** A leg by its parts along x and y, with its length and heading. */
export interface AdjustedLeg extends Leg {
  x: Mm
  y: Mm
}

/** A traverse that closes. */
export interface AdjustedTraverse {
  legs: AdjustedLeg[]
  /** Sums of the legs' parts before adjustment: the gap at the start. */
  misclosure: { x: Mm; y: Mm; gap: Mm }
  /** Total length of the legs as measured. */
  length: Mm
}

/** A leg by its parts along x and y, with its taped length. */
export interface LegParts {
  x: Mm
  y: Mm
  length: Mm
}

/**
 * A closed traverse with measured headings, adjusted by the compass rule: each leg takes a share of the gap in proportion to its length.
 * The rule suits surveys whose angles are as good as their lengths; it must not be used where turns were only assumed.
 */
export function compassRule(legs: readonly Leg[]): AdjustedTraverse {
  return compassRuleOfParts(
    legs.map(({ length, heading }) => {
      const { cos, sin } = cosSin(heading)
      return { x: length * cos, y: length * sin, length }
    }),
  )
}

/** The compass rule for legs already resolved along x and y (departures and latitudes). */
export function compassRuleOfParts(parts: readonly LegParts[]): AdjustedTraverse {
  const total = parts.reduce((sum, part) => sum + part.length, 0)
  const x = parts.reduce((sum, part) => sum + part.x, 0)
  const y = parts.reduce((sum, part) => sum + part.y, 0)
  const legs = parts.map((part) => {
    const share = total === 0 ? 0 : part.length / total
    return adjustedLeg(part.x - x * share, part.y - y * share)
  })
  return { legs, misclosure: { x, y, gap: Math.hypot(x, y) }, length: total }
}

function adjustedLeg(x: Mm, y: Mm): AdjustedLeg {
  return { x, y, length: Math.hypot(x, y), heading: (Math.atan2(y, x) * 180) / Math.PI }
}
