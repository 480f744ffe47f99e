import type { Point } from "./polygon/point.ts"
import { regionOf } from "./polygon/region.ts"
import { type Interval, sectionAt } from "./polygon/strips.ts"
import type { Mm } from "./units.ts"

/** A ceiling that just gives a headroom counts as giving it, mm. */
const rounding: Mm = 1e-6

/**
 * Where a section gives a headroom: stretches across the room, from its left foot, over which the ceiling is at least so high.
 * @param height above the floor that the profile stands on; for headroom from finished floor add the build-up to come
 */
export function headroomAt(profile: readonly Point[], height: Mm): Interval[] {
  return sectionAt(regionOf(profile), height - rounding)
}

/** Width over which a section gives a headroom, mm. See `headroomAt`. */
export function headroomWidth(profile: readonly Point[], height: Mm): Mm {
  return headroomAt(profile, height).reduce((sum, { from, to }) => sum + to - from, 0)
}
