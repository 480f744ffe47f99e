import { inset, intersection, offset } from "../../../kernels/polygon/clip.ts"
import { boundsOf } from "../../../kernels/polygon/measure.ts"
import type { Region } from "../../../kernels/polygon/region.ts"
import { type StripPiece, strips } from "../../../kernels/polygon/strips.ts"
import type { Mm } from "../../../kernels/units.ts"
import type { Run } from "./end-plan.ts"
import { profileOf } from "./profile.ts"

/** A run with the figure it fills. */
export interface RunShape extends Run {
  shape: Region
  bottom: Mm
  top: Mm
}

/** A run thinner than this stays part of the gap, mm: nobody can lay it. */
const sliver: Mm = 3
/** A strip with no more corners has no neck. */
const mostPlainCorners = 4
/** Lines of the grid reach this far beyond the floor, mm. */
const beyond: Mm = 0.01

/**
 * The runs of a floor, row by row from the first row's wall, left to right in each row.
 * @param floor figures in the frame of the rows
 * @param joint a joint line between rows, mm from the first row's wall; the others lie whole widths from it
 * @param firstRow number of its first row
 */
export function runsOf(floor: readonly Region[], joint: Mm, width: Mm, firstRow = 1): RunShape[] {
  const levels = levelsOver(floor, joint, width)
  const pieces = floor
    .flatMap((region) => strips(region, levels))
    .flatMap(withoutNecks)
    .filter((piece) => thickness(piece) >= sliver)
    .sort((a, b) => a.strip - b.strip || a.left - b.left || a.right - b.right)
  const used = [...new Set(pieces.map((piece) => piece.strip))]
  return pieces.map((piece) => {
    const row = used.indexOf(piece.strip) + firstRow
    const inRow = pieces.filter((other) => other.strip === piece.strip)
    const letter = inRow.length > 1 ? String.fromCharCode("a".charCodeAt(0) + inRow.indexOf(piece)) : ""
    return {
      row,
      name: `${row}${letter}`,
      left: piece.left,
      right: piece.right,
      shape: piece.region,
      bottom: levels[piece.strip]!,
      top: levels[piece.strip + 1]!,
      profile: profileOf(piece.region, { bottom: levels[piece.strip]!, top: levels[piece.strip + 1]! }),
    }
  })
}

function levelsOver(floor: readonly Region[], joint: Mm, width: Mm): Mm[] {
  const box = boundsOf(floor.flatMap((region) => region.outline))
  const first = Math.floor((box.bottom + beyond - joint) / width)
  const last = Math.ceil((box.top - beyond - joint) / width)
  return Array.from({ length: last - first + 1 }, (_, index) => joint + (first + index) * width)
}

/** Parts of a strip that hang together by less than can be laid, taken apart. */
function withoutNecks(piece: StripPiece): StripPiece[] {
  const { outline, holes } = piece.region
  if (outline.length <= mostPlainCorners && holes.length === 0) return [piece]
  const cores = inset(piece.region, sliver / 2).flatMap((core) => offset(core, sliver / 2))
  return intersection(cores, [piece.region]).map((region) => {
    const { left, right } = boundsOf(region.outline)
    return { ...piece, region, left, right }
  })
}

function thickness(piece: StripPiece): Mm {
  const box = boundsOf(piece.region.outline)
  return Math.min(box.top - box.bottom, box.right - box.left)
}

/**
 * Figures that a break along the rows parts, first ones nearest the first row's wall: each such field has a setting of its rows of its
 * own. Figures beside one another share their rows.
 */
export function fieldsOf(floor: readonly Region[]): Region[][] {
  const ranked = floor
    .map((region) => ({ region, box: boundsOf(region.outline) }))
    .sort((a, b) => a.box.bottom - b.box.bottom)
  const fields: { regions: Region[]; top: Mm }[] = []
  for (const { region, box } of ranked) {
    const last = fields.at(-1)
    if (!last || box.bottom >= last.top - beyond) fields.push({ regions: [region], top: box.top })
    else {
      last.regions.push(region)
      last.top = Math.max(last.top, box.top)
    }
  }
  return fields.map((field) => field.regions)
}
