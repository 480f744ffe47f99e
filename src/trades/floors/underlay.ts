import { boundsOf } from "../../kernels/polygon/measure.ts"
import type { Point } from "../../kernels/polygon/point.ts"
import type { Region } from "../../kernels/polygon/region.ts"
import { sectionAt } from "../../kernels/polygon/strips.ts"
import { type Mm, metres, type SquareMetres } from "../../kernels/units.ts"
import type { Rules } from "../../rulebook/rules.ts"
import { areaOfAll } from "./area.ts"
import { type Frame, regionToFrame } from "./layout/frame.ts"

/** Underlay of one room. */
export interface Underlay {
  net: SquareMetres
  /** With cuts and laps, m2. */
  gross: SquareMetres
  /** Strips side by side across the boards, and the joints between them, m. */
  strips: number
  joints: number
}

/**
 * Underlay laid in strips at right angles to the boards, butted and taped.
 * @param whole figures to the walls, on the plan; @param rollWidth mm
 */
export function underlayOf(whole: readonly Region[], frame: Frame, rollWidth: Mm, rules: Rules): Underlay {
  const net = areaOfAll(whole)
  const turned = whole.map((region) => swapped(regionToFrame(frame, region)))
  const box = boundsOf(turned.flatMap((region) => region.outline))
  let joints = 0
  let strips = 1
  for (let line = box.bottom + rollWidth; line < box.top; line += rollWidth) {
    strips++
    for (const region of turned) {
      for (const { from, to } of sectionAt(region, line)) joints += to - from
    }
  }
  const waste = rules.value("floor-underlay-waste") / 100
  return { net, gross: net * (1 + waste), strips, joints: metres(joints) }
}

function swapped(region: Region): Region {
  const ring = (points: readonly Point[]) => points.map(({ x, y }) => ({ x: y, y: x }))
  return { outline: ring(region.outline), holes: region.holes.map(ring) }
}
