import { cosSin, distance, type Point } from "../polygon/point.ts"
import type { Degrees, Mm } from "../units.ts"
import { textSize } from "./lettering.ts"
import { type Label, lineMark, type Mark } from "./marks.ts"
import type { DimensionShape } from "./shapes.ts"

/** Height of the figures of a dimension on paper, unless the drawing says otherwise: figures to work from. */
const figureHeight: Mm = 3.5
/** Free space between the thing and the projection line, on paper. */
const projectionGap: Mm = 1
/** How far projection lines and the dimension line run past each other, on paper. */
const overrun: Mm = 1.5
/** Half of an oblique tick, on paper. */
const tickReach: Mm = 1.1
/** Free space between the line and its figures, on paper. */
const figureGap: Mm = 0.7
/** A dimension line closer to the thing than this needs no projection lines. */
const shortOffset: Mm = 2
/** Places that figures may slide to along their line when they are in the way, as shares of its length from the middle. */
const slides: readonly number[] = [0, 0.1, -0.1, 0.2, -0.2, 0.3, -0.3, 0.4, -0.4]
/** Lines that fall more steeply than this read from the right like upright ones, degrees. */
const steepest: Degrees = 80

/** A dimension on paper: line, projection lines, oblique ticks, and its figures above the line, read from below or from the right. */
export function dimensionMarks(shape: DimensionShape, scale: number): { marks: Mark[]; label: Label } {
  const from = onPaper(shape.from, scale)
  const to = onPaper(shape.to, scale)
  const length = distance(from, to)
  const along = length === 0 ? { x: 1, y: 0 } : { x: (to.x - from.x) / length, y: (to.y - from.y) / length }
  const left = { x: -along.y, y: along.x }
  const start = moved(from, left, shape.offset)
  const end = moved(to, left, shape.offset)
  const thin = { width: 0.18 } as const
  const marks: Mark[] = [
    lineMark([moved(start, along, -overrun), moved(end, along, overrun)], thin),
    ...projections(from, to, left, shape.offset).map((points) => lineMark(points, thin)),
    ...[start, end].map((at) => lineMark(tick(at, along), { width: 0.5 })),
  ]
  return { marks, label: figures(shape, start, end) }
}

function projections(from: Point, to: Point, left: Point, offset: Mm): Point[][] {
  if (Math.abs(offset) < shortOffset) return []
  const sense = Math.sign(offset)
  return [from, to].map((at) => [
    moved(at, left, sense * projectionGap),
    moved(at, left, offset + sense * overrun),
  ])
}

function tick(at: Point, along: Point): Point[] {
  const oblique = { x: along.x - along.y, y: along.x + along.y }
  return [moved(at, oblique, -tickReach), moved(at, oblique, tickReach)]
}

function figures(shape: DimensionShape, start: Point, end: Point): Label {
  const angle = readable(Math.atan2(end.y - start.y, end.x - start.x) * (180 / Math.PI))
  const { cos, sin } = cosSin(angle)
  const height = shape.height ?? figureHeight
  const size = textSize(shape.text, height)
  const lift = figureGap + size.height / 2
  const middle = { x: (start.x + end.x) / 2, y: (start.y + end.y) / 2 }
  const length = distance(start, end)
  const beyond = (length + size.width) / 2 + overrun + figureGap
  const short = size.width > length - 2 * tickReach
  const alongWays = short ? [beyond, -beyond, 0] : slides.map((share) => share * length)
  return {
    at: { x: middle.x - sin * lift, y: middle.y + cos * lift },
    text: shape.text,
    height,
    angle,
    bold: false,
    fixed: false,
    masked: false,
    leader: true,
    shifts: [0, -2 * lift].flatMap((across) =>
      alongWays.map((way) => ({ x: way * cos - across * sin, y: way * sin + across * cos })),
    ),
  }
}

/** The angle of lettering along a line, so that it reads from below or from the right (ISO 129-1). */
function readable(angle: Degrees): Degrees {
  const cleared = Math.round(angle * 1000) / 1000
  if (cleared > 90) return cleared - 180
  if (cleared < -steepest) return cleared + 180
  return cleared
}

function onPaper(point: Point, scale: number): Point {
  return { x: point.x / scale, y: point.y / scale }
}

function moved(from: Point, way: Point, by: Mm): Point {
  return { x: from.x + way.x * by, y: from.y + way.y * by }
}
