import type { Mm } from "../../../kernels/units.ts"
import type { GapRange } from "./gap.ts"

/** One measured width, filled: hingeGap + leaf + lockGap = opening. */
export interface AcrossPoint {
  at: string
  opening: Mm
  hingeGap: Mm
  hingeTrim: Mm
  leaf: Mm
  lockTrim: Mm
  lockGap: Mm
}

/** One measured height over the finished floor, filled: headGap + leaf + undercut = opening. */
export interface UpPoint {
  at: string
  opening: Mm
  headGap: Mm
  headTrim: Mm
  leaf: Mm
  footTrim: Mm
  undercut: Mm
}

/** What cannot be met at a measured point. */
export interface Miss {
  edge: "lock edge" | "head" | "foot"
  at: string
  /** The gap it comes to, and the limit it breaks, mm. */
  figure: Mm
  limit: Mm
  kind: "gap-over" | "gap-under"
  /** How much more would have to come off than the leaf's data allow, mm; 0 where the opening is too large. */
  over: Mm
}

/** Half a millimetre: the finest a joiner marks; the search goes by it. */
const halfMm = 0.5
/** Less than this is no difference, mm. */
const nought = 1e-6

/**
 * A leaf fitted between two jambs. The hinge edge stays straight: it is planed evenly and keeps one gap from top to bottom; the
 * lock edge is planed point by point. What counts is by how much trim at the hinge edge exceeds its gap (the shift). Of all ways by half millimetres the one is taken that breaks the limits least, then lies
 * nearest the gaps aimed at, then takes least off the hinge edge.
 * @param openings widths between the linings, mm, top to bottom
 * @param limits   most that may be taken off each edge, mm
 * @returns each point filled to the millimetre, and what breaks a limit there; no trim is ever over its limit
 */
export function fitAcross(
  openings: readonly Mm[],
  leaf: Mm,
  limits: { hinge: Mm; lock: Mm },
  gap: GapRange,
): { points: AcrossPoint[]; misses: Miss[] } {
  const most = downToHalf(limits.lock)
  const ways = halves(-gap.most, downToHalf(limits.hinge) - gap.least).map((shift) => {
    const hingeGap = within(gap.target, Math.max(gap.least, -shift), Math.min(gap.most, limits.hinge - shift))
    const spare = openings.map((opening) => opening - leaf + shift)
    const trims = spare.map((each) => within(upToHalf(gap.target - each), 0, most))
    const gaps = spare.map((each, n) => each + trims[n]!)
    const worth = [
      sum(gaps.map((each) => beyond(each, gap))),
      sum(gaps.map((each) => Math.abs(each - gap.target))) + Math.abs(hingeGap - gap.target),
      hingeGap + shift,
    ]
    return { hingeTrim: hingeGap + shift, hingeGap, trims, gaps, worth }
  })
  const best = ways.reduce((held, way) => (isBetter(way.worth, held.worth) ? way : held))
  const points = openings.map((opening, n) => ({
    at: pointName(n, openings.length, ["top", "middle", "bottom"]),
    opening,
    hingeGap: best.hingeGap,
    hingeTrim: best.hingeTrim,
    leaf: leaf - best.hingeTrim - best.trims[n]!,
    lockTrim: best.trims[n]!,
    lockGap: best.gaps[n]!,
  }))
  return { points, misses: points.flatMap(({ at, lockGap }) => miss("lock edge", at, lockGap, gap)) }
}

/**
 * A leaf fitted between head and floor. The foot is straight and level and keeps one gap; the head is planed point by point where
 * its data allow. Of all ways by half millimetres the one is taken that breaks the limits least, then lies nearest the gaps
 * aimed at, then takes least off.
 * @param openings heights over the highest finished floor, mm, left to right
 */
export function fitUp(
  openings: readonly Mm[],
  leaf: Mm,
  limits: { head: Mm; foot: Mm },
  gaps: { head: GapRange; foot: GapRange },
): { points: UpPoint[]; misses: Miss[] } {
  const { head, foot } = gaps
  const most = downToHalf(limits.head)
  const ways = halves(-foot.most, downToHalf(limits.foot) - foot.least).map((shift) => {
    const undercut = within(
      foot.target,
      Math.max(foot.least, -shift),
      Math.min(foot.most, limits.foot - shift),
    )
    const spare = openings.map((opening) => opening - leaf + shift)
    const trims = spare.map((each) => within(upToHalf(head.least - each), 0, most))
    const over = spare.map((each, n) => each + trims[n]!)
    const worth = [
      sum(over.map((each) => beyond(each, head))),
      sum(over.map((each) => Math.abs(each - head.target))) / openings.length +
        Math.abs(undercut - foot.target),
      sum(trims),
      undercut + shift,
    ]
    return { footTrim: undercut + shift, undercut, trims, over, worth }
  })
  const best = ways.reduce((held, way) => (isBetter(way.worth, held.worth) ? way : held))
  const points = openings.map((opening, n) => ({
    at: pointName(n, openings.length, ["left", "middle", "right"]),
    opening,
    headGap: best.over[n]!,
    headTrim: best.trims[n]!,
    leaf: leaf - best.footTrim - best.trims[n]!,
    footTrim: best.footTrim,
    undercut: best.undercut,
  }))
  return { points, misses: points.flatMap(({ at, headGap }) => miss("head", at, headGap, head)) }
}

/** The measured heights at the hinge jamb and at the lock jamb; left and right are as seen from where the knuckles show. */
export function jambs(
  up: readonly UpPoint[],
  hinges: "left" | "right" | undefined,
): { hinge: UpPoint; lock: UpPoint } {
  const left = up[0]!
  const right = up.at(-1)!
  return hinges === "right" ? { hinge: right, lock: left } : { hinge: left, lock: right }
}

function miss(edge: Miss["edge"], at: string, figure: Mm, gap: GapRange): Miss[] {
  if (figure > gap.most + nought) return [{ edge, at, figure, limit: gap.most, kind: "gap-over", over: 0 }]
  if (figure < gap.least - nought)
    return [{ edge, at, figure, limit: gap.least, kind: "gap-under", over: gap.least - figure }]
  return []
}

function beyond(figure: Mm, gap: GapRange): Mm {
  return Math.max(0, figure - gap.most, gap.least - figure)
}

/** True if the first list is less than the second at the first place where they differ. */
function isBetter(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, n) => Math.abs(value - b[n]!) > nought)
  return at >= 0 && a[at]! < b[at]!
}

function halves(from: Mm, to: Mm): Mm[] {
  const count = Math.max(0, Math.floor((to - from + nought) / halfMm))
  return Array.from({ length: count + 1 }, (_, n) => from + n * halfMm)
}

function pointName(index: number, count: number, names: readonly [string, string, string]): string {
  if (count === 1) return "measured once"
  if (count === 2) return index === 0 ? names[0] : names[2]
  return names[index] ?? names[2]
}

function within(value: Mm, low: Mm, high: Mm): Mm {
  return Math.min(high, Math.max(low, value))
}

function sum(values: readonly number[]): number {
  return values.reduce((total, each) => total + each, 0)
}

function upToHalf(value: Mm): Mm {
  return Math.ceil((value - nought) / halfMm) * halfMm
}

function downToHalf(value: Mm): Mm {
  return Math.floor((value + nought) / halfMm) * halfMm
}
