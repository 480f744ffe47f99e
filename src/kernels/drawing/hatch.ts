import { boundsOf } from "../polygon/measure.ts"
import { rotated } from "../polygon/point.ts"
import type { Region } from "../polygon/region.ts"
import { sectionAt } from "../polygon/strips.ts"
import type { Mm } from "../units.ts"
import type { PathMark } from "./marks.ts"
import type { HatchShape } from "./shapes.ts"

/** The lines of a hatch on paper, cut true to the figure. Lines keep to one grid, so that neighbours match. */
export function hatchMark(shape: HatchShape, scale: number): PathMark {
  const paper = scaled(shape.region, scale)
  const flat: Region = {
    outline: rotated(paper.outline, -shape.angle),
    holes: paper.holes.map((hole) => rotated(hole, -shape.angle)),
  }
  const lines = levels(flat, shape.spacing).flatMap((y) =>
    sectionAt(flat, y).map(({ from, to }) =>
      rotated(
        [from, to].map((x) => ({ x, y })),
        shape.angle,
      ),
    ),
  )
  const stroke = { width: shape.width ?? 0.18, ...(shape.dash ? { dash: shape.dash } : {}) }
  return { kind: "path", lines, closed: false, stroke, fill: "none", avoided: false }
}

function levels(region: Region, spacing: Mm): Mm[] {
  const { bottom, top } = boundsOf(region.outline)
  const found: Mm[] = []
  for (let step = Math.ceil(bottom / spacing); step * spacing < top; step++) found.push(step * spacing)
  return found
}

function scaled(region: Region, scale: number): Region {
  const ring = (points: Region["outline"]) => points.map(({ x, y }) => ({ x: x / scale, y: y / scale }))
  return { outline: ring(region.outline), holes: region.holes.map(ring) }
}
