import type { Mm } from "../units.ts"
import { intersection } from "./clip.ts"
import { boundsOf } from "./measure.ts"
import { type Region, regionEdges, regionOf } from "./region.ts"

/** A stretch along a horizontal line, mm. */
export interface Interval {
  from: Mm
  to: Mm
}

/** What of a figure lies in one horizontal strip: a strip may hold several pieces. */
export interface StripPiece {
  /** Which strip, counted from the lowest, from 0. */
  strip: number
  bottom: Mm
  top: Mm
  /** The true shape of the piece; corners to 1/1000 mm. */
  region: Region
  /** Furthest left and right that the piece reaches anywhere in the strip. */
  left: Mm
  right: Mm
}

/**
 * Where a horizontal line at height y runs inside a figure: stretches from left to right.
 * Exactly along a horizontal edge, the line counts as lying a hair above it.
 */
export function sectionAt(region: Region, y: Mm): Interval[] {
  const crossings: Mm[] = []
  for (const { from, to } of regionEdges(region)) {
    if (from.y > y === to.y > y) continue
    crossings.push(from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x))
  }
  crossings.sort((a, b) => a - b)
  const stretches: Interval[] = []
  for (let index = 0; index + 1 < crossings.length; index += 2) {
    const stretch = { from: crossings[index]!, to: crossings[index + 1]! }
    const last = stretches.at(-1)
    if (last && last.to === stretch.from) last.to = stretch.to
    else stretches.push(stretch)
  }
  return stretches
}

/**
 * A figure cut into horizontal strips between levels (rising, mm); strip i lies between level i and level i + 1.
 * Pieces come strip by strip from below, within a strip from left to right. What lies outside the levels is left out.
 */
export function strips(region: Region, levels: readonly Mm[]): StripPiece[] {
  const box = boundsOf(region.outline)
  return levels.slice(0, -1).flatMap((bottom, strip) => {
    const top = levels[strip + 1]!
    const band = regionOf([
      { x: box.left - 1, y: bottom },
      { x: box.right + 1, y: bottom },
      { x: box.right + 1, y: top },
      { x: box.left - 1, y: top },
    ])
    return intersection([region], [band])
      .map((piece) => {
        const { left, right } = boundsOf(piece.outline)
        return { strip, bottom, top, region: piece, left, right }
      })
      .sort((a, b) => a.left - b.left || a.right - b.right)
  })
}
