import { type SquareMetres, squareMetres } from "../kernels/units.ts"

/** An opening as far as measurement rules look at it, mm. */
export interface Void {
  width: number
  height: number
}

/**
 * Area taken out of a surface for its openings by a measurement rule: voids up to the largest one that is not deducted stay in.
 * @param notDeducted the largest void that stays in, m2 (0.50 by SMM7, 1.00 by NRM2); a void of exactly that size stays in
 * @returns m2, unrounded
 */
export function voidsOut(voids: readonly Void[], notDeducted: SquareMetres): SquareMetres {
  return voids
    .map(({ width, height }) => squareMetres(width * height))
    .filter((area) => area > notDeducted)
    .reduce((sum, area) => sum + area, 0)
}
