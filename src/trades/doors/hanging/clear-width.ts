import type { Mm } from "../../../kernels/units.ts"

/**
 * Clear opening of a door: leaf and leading-edge gap, less the stop and the leaf's thickness (or the stop's where that is more),
 * face of stop to face of leaf at 90 degrees, mm. Handles do not count where the leaf opens past 90 degrees (a construction
 * reference page after Approved Document M vol 1).
 */
export function clearWidth(about: { leaf: Mm; gap: Mm; stop: Mm; thickness: Mm }): Mm {
  return about.leaf + about.gap - about.stop - Math.max(about.thickness, about.stop)
}
