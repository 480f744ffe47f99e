import type { Mm } from "../../../kernels/units.ts"
import { type AcrossPoint, fitAcross, fitUp, type Miss, type UpPoint } from "./fit.ts"
import type { GapRange } from "./gap.ts"

/** A new lining in its structural opening, with the leaf in it. */
export interface LiningFit {
  /** Between the lining's legs, and from the highest finished floor to the underside of its head, mm. */
  internalWidth: Mm
  internalHeight: Mm
  thickness: Mm
  /** Packing each side at each measured width; over the head at each measured height, mm. */
  packingSides: { at: string; opening: Mm; each: Mm }[]
  packingHead: { at: string; opening: Mm; over: Mm }[]
  across: AcrossPoint[]
  up: UpPoint[]
  misses: (Miss | PackingMiss)[]
}

/** Width and height, mm. */
export interface Size {
  width: Mm
  height: Mm
}

/** An opening that a lining cannot be packed into. */
export interface PackingMiss {
  edge: "packing each side" | "packing over the head"
  at: string
  figure: Mm
  limit: Mm
  kind: "packing-over" | "packing-under"
}

/** What a lining is fitted to. */
export interface LiningCase {
  /** Structural widths, top to bottom, and heights over the highest finished floor, left to right, mm. */
  widths: readonly Mm[]
  heights: readonly Mm[]
  leaf: { width: Mm; height: Mm; trim: { hinge: Mm; lock: Mm; head: Mm; foot: Mm } }
  thickness: Mm
  gap: GapRange
  foot: GapRange
  packing: { least: Mm; most: Mm }
}

/** Less than this is no difference, mm. */
const nought = 1e-6

/**
 * Internal width of a lining for a leaf: leaf and a gap each side; internal height over the finished floor: leaf, head gap and
 * undercut (arithmetic of common practice).
 */
export function liningSize(leaf: Size, gap: Mm, undercut: Mm): Size {
  return { width: leaf.width + 2 * gap, height: leaf.height + gap + undercut }
}

/**
 * A new lining packed into its opening. The lining takes the leaf's size with the gaps aimed at; where packing would leave its
 * limits, more within the widest gaps, or less with the leaf trimmed to it. Packing takes up the rest, the same on both sides.
 */
export function fitLining(about: LiningCase): LiningFit {
  const { leaf, gap, foot, thickness, packing } = about
  const { width, height } = insideLining(about)
  const across = fitAcross(
    about.widths.map(() => width),
    leaf.width,
    leaf.trim,
    gap,
  )
  const up = fitUp(
    about.heights.map(() => height),
    leaf.height,
    leaf.trim,
    { head: gap, foot },
  )
  const packingSides = across.points.map(({ at }, n) => ({
    at,
    opening: about.widths[n]!,
    each: (about.widths[n]! - width - 2 * thickness) / 2,
  }))
  const packingHead = up.points.map(({ at }, n) => ({
    at,
    opening: about.heights[n]!,
    over: about.heights[n]! - height - thickness,
  }))
  const misses = [
    ...across.misses,
    ...up.misses,
    ...packingSides.flatMap((each) => miss("packing each side", each.at, each.each, packing)),
    ...packingHead.flatMap((each) => miss("packing over the head", each.at, each.over, packing)),
  ]
  const size = { internalWidth: width, internalHeight: height, thickness }
  return { ...size, packingSides, packingHead, across: across.points, up: up.points, misses }
}

/** Inside size of the lining: the leaf's own, moved within its gaps and trims so that packing keeps within its limits. */
function insideLining({ widths, heights, leaf, thickness, gap, foot, packing }: LiningCase): Size {
  const wished = liningSize(leaf, gap.target, foot.target)
  const widest = liningSize(leaf, gap.most, foot.most)
  const wide = {
    least: Math.max(...widths) - 2 * thickness - 2 * packing.most,
    most: Math.min(...widths) - 2 * thickness - 2 * packing.least,
  }
  const high = {
    least: Math.max(...heights) - thickness - packing.most,
    most: Math.min(...heights) - thickness - packing.least,
  }
  return {
    width: Math.min(wide.most, widest.width, Math.max(wished.width, wide.least)),
    height: Math.min(high.most, widest.height, Math.max(wished.height, high.least)),
  }
}

function miss(
  edge: PackingMiss["edge"],
  at: string,
  figure: Mm,
  packing: LiningCase["packing"],
): PackingMiss[] {
  if (figure > packing.most + nought) return [{ edge, at, figure, limit: packing.most, kind: "packing-over" }]
  if (figure < packing.least - nought)
    return [{ edge, at, figure, limit: packing.least, kind: "packing-under" }]
  return []
}
