import { boundsOf } from "../../../kernels/polygon/measure.ts"
import type { Region } from "../../../kernels/polygon/region.ts"
import type { Mm } from "../../../kernels/units.ts"

/** What a piece must have of the board's long edges, and how wide it must be. */
export interface Need {
  groove: boolean
  tongue: boolean
  width: Mm
}

/** Between two corners of a run: least and greatest height above the row's near edge, mm, at its left and right end. */
interface Span {
  from: Mm
  to: Mm
  low: [Mm, Mm]
  high: [Mm, Mm]
}

/** How far a run reaches across its row along its length; null where it fills the row throughout. */
export type Profile = readonly Span[] | null

/** A run that comes this near to the edge of its row needs the board's edge there, mm. */
const atEdge: Mm = 0.5
/** Heights are read this far inside a span, mm. */
const hair: Mm = 0.001

/** The profile of a run. @param level edges of the uncut row in the frame */
export function profileOf(run: Region, level: { bottom: Mm; top: Mm }): Profile {
  const xs = [...new Set(run.outline.map((point) => point.x))].sort((a, b) => a - b)
  const spans = xs.slice(1).flatMap((to, index): Span[] => {
    const from = xs[index]!
    if (to - from < 2 * hair) return []
    const [left, right] = [reachAt(run, from + hair), reachAt(run, to - hair)]
    if (!left || !right) return []
    const above = (y: Mm) => y - level.bottom
    return [
      {
        from,
        to,
        low: [above(left.low), above(right.low)],
        high: [above(left.high), above(right.high)],
      },
    ]
  })
  const width = level.top - level.bottom
  const box = boundsOf(run.outline)
  const isFull = spans.every(
    ({ from, to, low, high }) =>
      (Math.max(...low) < atEdge && Math.min(...high) > width - atEdge) ||
      to - box.left < width ||
      box.right - from < width,
  )
  return isFull ? null : spans
}

/** What a piece of a run needs from `left` to `right`, mm in the frame. */
export function needOf(profile: Profile, width: Mm, piece: { left: Mm; right: Mm }): Need {
  if (!profile) return { groove: true, tongue: true, width }
  let low = width
  let high = 0
  for (const span of profile) {
    if (span.to <= piece.left + hair || span.from >= piece.right - hair) continue
    for (const x of [Math.max(span.from, piece.left), Math.min(span.to, piece.right)]) {
      low = Math.min(low, at(span, span.low, x))
      high = Math.max(high, at(span, span.high, x))
    }
  }
  const groove = low < atEdge
  const tongue = high > width - atEdge
  if (groove && tongue) return { groove, tongue, width }
  if (tongue) return { groove, tongue, width: width - low }
  return { groove, tongue, width: groove ? Math.max(0, high) : Math.max(0, high - low) }
}

/**
 * What pieces of a run need at least, place by place: every piece reaches so far in from the run's ends that it covers one of these places.
 * @param leastEnd shortest piece of a jointed run, mm
 */
export function leastNeeds(
  profile: Profile,
  width: Mm,
  run: { left: Mm; right: Mm; leastEnd: Mm },
): { need: Need; length: Mm }[] {
  if (!profile) return []
  const { left, right, leastEnd } = run
  if (right - left < 2 * leastEnd + 1)
    return [{ need: needOf(profile, width, { left, right }), length: right - left }]
  return profile.flatMap((span) => {
    const from = Math.max(span.from, left + leastEnd)
    const to = Math.min(span.to, right - leastEnd)
    if (to - from < 2 * hair) return []
    const place = (x: Mm) => ({ left: Math.max(from, x - 2 * hair), right: Math.min(to, x + 2 * hair) })
    const length = (span.to - span.from) / 2
    return [from, to].map((x) => ({ need: needOf(profile, width, place(x)), length }))
  })
}

function at(span: Span, ends: [Mm, Mm], x: Mm): Mm {
  return ends[0] + ((ends[1] - ends[0]) * (x - span.from)) / (span.to - span.from)
}

/** Lowest and highest point of a figure on a crosswise line. */
function reachAt(run: Region, x: Mm): { low: Mm; high: Mm } | null {
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  run.outline.forEach((from, index) => {
    const to = run.outline[(index + 1) % run.outline.length]!
    if (from.x > x === to.x > x) return
    const y = from.y + ((x - from.x) / (to.x - from.x)) * (to.y - from.y)
    low = Math.min(low, y)
    high = Math.max(high, y)
  })
  return high < low ? null : { low, high }
}
