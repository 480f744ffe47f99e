import { type Bounds, boundsOf } from "../polygon/measure.ts"
import type { Point } from "../polygon/point.ts"
import { edgesOf } from "../polygon/region.ts"
import type { Mm } from "../units.ts"
import { dimensionMarks } from "./dimension.ts"
import { hatchMark } from "./hatch.ts"
import { type Obstacle, type PlacedLabel, placeLabels } from "./labels.ts"
import { textSize } from "./lettering.ts"
import { boxCorners, grown, type Label, lineMark, type Mark, markReach, middleOf } from "./marks.ts"
import { largestScale, type PaperBox, type Scale } from "./scale.ts"
import { scaleBarMarks } from "./scale-bar.ts"
import type { Drawing, PolygonShape, Shape, TextShape } from "./shapes.ts"

/** A drawing laid out on paper at a scale: mm on paper, y up, every label in its place. */
export interface Layout {
  marks: readonly Mark[]
  labels: readonly PlacedLabel[]
  /** Everything drawn lies within. */
  box: Bounds
}

/** White kept round a drawing, so that no stroke is cut through its middle. */
const margin: Mm = 1
/** Distance of a scale bar below the drawing. */
const barDrop: Mm = 6
/** A moved label further off than this gets a line to where it belongs. */
const leaderFrom: Mm = 9

/** A drawing laid out on paper: shapes at their true scale, texts at their own size, moved so that none lies over another. */
export function layoutDrawing(drawing: Drawing, scale: Scale): Layout {
  const marks: Mark[] = []
  const labels: Label[] = []
  for (const shape of drawing.shapes) {
    if (shape.kind === "text") labels.push(textLabel(shape, scale))
    else if (shape.kind === "dimension") {
      const dimension = dimensionMarks(shape, scale)
      marks.push(...dimension.marks)
      labels.push(dimension.label)
    } else marks.push(...shapeMarks(shape, scale))
  }
  const placed = placeLabels(labels, obstaclesOf(marks))
  const leaders = placed.flatMap((label, index) => leader(label, labels[index]!))
  const layout = withBox([...marks, ...leaders], placed)
  const bar = drawing.shapes.find((shape) => shape.kind === "scale-bar")
  return bar ? withScaleBar(layout, bar.at ? onPaper(bar.at, scale) : undefined, scale) : layout
}

/** The largest standard scale at which a drawing fits on the paper with all its dimensions and texts; the smallest if none does. */
export function fitDrawing(drawing: Drawing, paper: PaperBox): Scale {
  return largestScale((scale) => {
    const { box } = layoutDrawing(drawing, scale)
    return box.right - box.left <= paper.widthMm && box.top - box.bottom <= paper.heightMm
  })
}

function shapeMarks(shape: Exclude<Shape, { kind: "text" | "dimension" }>, scale: Scale): Mark[] {
  switch (shape.kind) {
    case "line":
      return [lineMark([onPaper(shape.from, scale), onPaper(shape.to, scale)], shape.stroke)]
    case "polyline":
      return [
        lineMark(
          shape.points.map((point) => onPaper(point, scale)),
          shape.stroke,
        ),
      ]
    case "polygon":
      return [figureMark(shape, scale)]
    case "box": {
      const { at, width, height, ...drawn } = shape
      const corners = [
        at,
        { x: at.x + width, y: at.y },
        { x: at.x + width, y: at.y + height },
        { x: at.x, y: at.y + height },
      ]
      return [figureMark({ ...drawn, kind: "polygon", points: corners }, scale)]
    }
    case "arc":
      return [{ ...shape, centre: onPaper(shape.centre, scale), radius: shape.radius / scale }]
    case "hatch":
      return [hatchMark(shape, scale)]
    case "scale-bar":
      return []
  }
}

function figureMark(shape: PolygonShape, scale: Scale): Mark {
  const lines = [shape.points, ...(shape.holes ?? [])].map((ring) =>
    ring.map((point) => onPaper(point, scale)),
  )
  const fill = shape.fill ?? "none"
  const stroke = shape.stroke ? { stroke: shape.stroke } : {}
  return { kind: "path", lines, closed: true, ...stroke, fill, avoided: shape.stroke !== undefined }
}

function textLabel(shape: TextShape, scale: Scale): Label {
  const angle = shape.angle ?? 0
  const bold = shape.bold ?? false
  const { width } = textSize(shape.text, shape.height, bold)
  const at = middleOf(onPaper(shape.at, scale), width, shape.anchor ?? "middle", angle)
  return {
    at,
    text: shape.text,
    height: shape.height,
    angle,
    bold,
    fixed: shape.fixed ?? false,
    masked: shape.masked ?? false,
    leader: shape.leader ?? false,
    shifts: [],
  }
}

function obstaclesOf(marks: readonly Mark[]): Obstacle[] {
  return marks.flatMap((mark) => {
    if (mark.kind === "arc" || !mark.avoided) return []
    return mark.lines.flatMap((line) => (mark.closed ? edgesOf(line) : edgesOf(line).slice(0, -1)))
  })
}

function leader(label: PlacedLabel, wished: Label): Mark[] {
  const kept = wished.shifts.some(
    (shift) => wished.at.x + shift.x === label.at.x && wished.at.y + shift.y === label.at.y,
  )
  if (!label.leader || kept || label.moved < leaderFrom) return []
  const share = Math.min(1, label.box.height / label.moved)
  const near = {
    x: label.at.x + (wished.at.x - label.at.x) * share,
    y: label.at.y + (wished.at.y - label.at.y) * share,
  }
  return [lineMark([near, wished.at], { width: 0.18 })]
}

function withScaleBar(layout: Layout, at: Point | undefined, scale: Scale): Layout {
  const below = { x: layout.box.left + 2 * margin, y: layout.box.bottom - barDrop }
  const bar = scaleBarMarks(at ?? below, scale)
  return withBox([...layout.marks, ...bar.marks], [...layout.labels, ...placeLabels(bar.labels)])
}

function withBox(marks: readonly Mark[], labels: readonly PlacedLabel[]): Layout {
  const reach = [...marks.flatMap(markReach), ...labels.flatMap((label) => boxCorners(label.box))]
  return { marks, labels, box: grown(boundsOf(reach), margin) }
}

function onPaper(point: Point, scale: Scale): Point {
  return { x: point.x / scale, y: point.y / scale }
}
