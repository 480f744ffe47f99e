import { layoutDrawing } from "../../kernels/drawing/layout.ts"
import { fitScale, type Scale } from "../../kernels/drawing/scale.ts"
import type { Drawing, Shape } from "../../kernels/drawing/shapes.ts"
import { boundsOf } from "../../kernels/polygon/measure.ts"
import type { Point } from "../../kernels/polygon/point.ts"
import type { Mm } from "../../kernels/units.ts"
import type { Room, Wall } from "../room.ts"
import { describe, type ElevationOptions, wallShapes } from "./wall-elevation.ts"

/** Walls of a room unfolded side by side, as many as fit the paper; all at one scale. */
export interface UnfoldedRow {
  drawing: Drawing
  scale: Scale
  walls: number[]
}

/** Paper for one wall without its dimensions, mm; and the width a row may take with everything beside it. */
const paper = { widthMm: 144, heightMm: 62 }
const rowWidth: Mm = 178
/** Room between two elevations for their heights, mm on paper. */
const gap: Mm = 20

/** Every wall of a room seen from inside, in order, in rows that fit a sheet, at one standard scale. */
export function unfoldedWalls(room: Room, options: ElevationOptions): UnfoldedRow[] {
  const widest = Math.max(...room.walls.map(({ length }) => length))
  const tallest = Math.max(...room.walls.map(({ elevation }) => boundsOf(elevation).top))
  const scale = fitScale({ left: 0, bottom: 0, right: widest, top: tallest }, paper)
  const rows: UnfoldedRow[] = []
  let walls: Wall[] = []
  for (const wall of room.walls) {
    const longer = rowOf(room, [...walls, wall], { ...options, scale })
    const fits = walls.length > 0 && widthOf(longer) <= rowWidth
    walls = fits ? [...walls, wall] : [wall]
    if (fits) rows[rows.length - 1] = longer
    else rows.push(rowOf(room, walls, { ...options, scale }))
  }
  return rows
}

function rowOf(
  room: Room,
  walls: readonly Wall[],
  options: ElevationOptions & { scale: Scale },
): UnfoldedRow {
  return {
    scale: options.scale,
    walls: walls.map(({ number }) => number),
    drawing: rowDrawing(room, walls, options),
  }
}

/** Width of a row on paper with its dimensions and names, mm. */
function widthOf({ drawing, scale }: UnfoldedRow): Mm {
  const { box } = layoutDrawing(drawing, scale)
  return box.right - box.left
}

function rowDrawing(
  room: Room,
  walls: readonly Wall[],
  options: ElevationOptions & { scale: Scale },
): Drawing {
  let at = 0
  const shapes = walls.flatMap((wall, index) => {
    const datum = index === 0 ? options.datum : ""
    const placed = wallShapes(room, wall, { ...options, datum }).map((shape) => moved(shape, at))
    at += wall.length + gap * options.scale
    return placed
  })
  const numbers = walls.map(({ number }) => number)
  const [first, last] = [numbers[0], numbers[numbers.length - 1]]
  return {
    title: `${room.id}, ${first === last ? `wall ${first}` : `walls ${first} to ${last}`} from inside`,
    description: walls.map(describe).join(" "),
    shapes: [...shapes, { kind: "scale-bar" }],
  }
}

/** A shape moved to the right, mm of the room. */
function moved(shape: Shape, by: Mm): Shape {
  const to = (point: Point): Point => ({ x: point.x + by, y: point.y })
  switch (shape.kind) {
    case "line":
    case "dimension":
      return { ...shape, from: to(shape.from), to: to(shape.to) }
    case "polyline":
      return { ...shape, points: shape.points.map(to) }
    case "polygon":
      return {
        ...shape,
        points: shape.points.map(to),
        ...(shape.holes ? { holes: shape.holes.map((h) => h.map(to)) } : {}),
      }
    case "hatch": {
      const { outline, holes } = shape.region
      return { ...shape, region: { outline: outline.map(to), holes: holes.map((hole) => hole.map(to)) } }
    }
    case "arc":
      return { ...shape, centre: to(shape.centre) }
    case "box":
    case "text":
      return { ...shape, at: to(shape.at) }
    case "scale-bar":
      return shape.at ? { ...shape, at: to(shape.at) } : shape
  }
}
