import type { Bounds } from "../polygon/measure.ts"
import { cosSin, type Point } from "../polygon/point.ts"
import type { Degrees, Mm } from "../units.ts"
import { textSize } from "./lettering.ts"
import type { Anchor, ArcShape, Fill, Stroke } from "./shapes.ts"

/** A line or figure on paper, mm, y up: rings closed or one open line. */
export interface PathMark {
  kind: "path"
  lines: readonly (readonly Point[])[]
  closed: boolean
  stroke?: Stroke
  fill: Fill
  /** True where texts should rather not lie over it. */
  avoided: boolean
}

/** An arc on paper, mm, y up. */
export interface ArcMark {
  kind: "arc"
  centre: Point
  radius: Mm
  from: Degrees
  to: Degrees
  stroke: Stroke
}

/** Anything drawn on paper but lettering. */
export type Mark = PathMark | ArcMark

/** Lettering on paper: the point is the middle of its box. */
export interface Label {
  at: Point
  text: string
  height: Mm
  angle: Degrees
  bold: boolean
  fixed: boolean
  masked: boolean
  /** A thin line leads back to its point if it had to move well away. */
  leader: boolean
  /** Ways it may shift that keep its sense (a dimension's figures along and across their line), tried first, mm. */
  shifts: readonly Point[]
}

/** A box that may be turned about its middle, mm on paper. */
export interface LabelBox {
  centre: Point
  width: Mm
  height: Mm
  angle: Degrees
}

/** An open line on paper. */
export function lineMark(points: readonly Point[], stroke: Stroke): PathMark {
  return { kind: "path", lines: [points], closed: false, stroke, fill: "none", avoided: true }
}

/** The room a label takes on paper. */
export function labelBox(label: Label): LabelBox {
  const size = textSize(label.text, label.height, label.bold)
  return { centre: label.at, width: size.width, height: size.height, angle: label.angle }
}

/** The middle of a text whose left end, middle or right end lies at a point. */
export function middleOf(at: Point, width: Mm, anchor: Anchor, angle: Degrees): Point {
  const along = anchor === "start" ? width / 2 : anchor === "end" ? -width / 2 : 0
  const { cos, sin } = cosSin(angle)
  return { x: at.x + along * cos, y: at.y + along * sin }
}

/** The four corners of a turned box, anticlockwise from its lower left. */
export function boxCorners(box: LabelBox): Point[] {
  const { cos, sin } = cosSin(box.angle)
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([across, up]) => {
    const dx = (across! * box.width) / 2
    const dy = (up! * box.height) / 2
    return { x: box.centre.x + dx * cos - dy * sin, y: box.centre.y + dx * sin + dy * cos }
  })
}

/** Points that reach as far as the arc does: its ends, and where it is furthest left, right, up and down. */
export function arcReach(arc: Pick<ArcShape, "centre" | "radius" | "from" | "to">): Point[] {
  const angles = [arc.from, arc.to]
  for (let quarter = Math.ceil(arc.from / 90); quarter * 90 <= arc.to; quarter++) angles.push(quarter * 90)
  return angles.map((angle) => {
    const { cos, sin } = cosSin(angle)
    return { x: arc.centre.x + arc.radius * cos, y: arc.centre.y + arc.radius * sin }
  })
}

/** All points that a mark reaches. */
export function markReach(mark: Mark): Point[] {
  return mark.kind === "arc" ? arcReach(mark) : mark.lines.flat()
}

/** A box grown by a margin all round. */
export function grown(box: Bounds, by: Mm): Bounds {
  return { left: box.left - by, bottom: box.bottom - by, right: box.right + by, top: box.top + by }
}
