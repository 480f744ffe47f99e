import type { Bounds } from "../polygon/measure.ts"
import type { Mm } from "../units.ts"

/** Real length over paper length: 20 for a scale of 1:20. */
export type Scale = number

/** Full size and the reduction scales that ISO 5455 recommends, as far as a room or a house needs them. */
export const standardScales: readonly Scale[] = [1, 2, 5, 10, 20, 50, 100, 200]

/** Room on the paper, mm. */
export interface PaperBox {
  widthMm: Mm
  heightMm: Mm
}

/** The largest standard scale at which a box of the real thing fits on the paper; the smallest one if none does. */
export function fitScale(bounds: Bounds, paper: PaperBox): Scale {
  return largestScale((scale) => {
    const wide = (bounds.right - bounds.left) / scale
    const high = (bounds.top - bounds.bottom) / scale
    return wide <= paper.widthMm && high <= paper.heightMm
  })
}

/** The largest standard scale that passes a test; the smallest one if none does. */
export function largestScale(fits: (scale: Scale) => boolean): Scale {
  return standardScales.find(fits) ?? standardScales.at(-1)!
}

/** A scale as it is written: `1:20`. */
export function scaleText(scale: Scale): string {
  return `1:${scale}`
}
