import type { Drawing, Shape } from "../kernels/drawing/shapes.ts"
import type { Mm } from "../kernels/units.ts"
import type { Room, Wall } from "../survey/room.ts"

/** Something at a place on a wall: a point, or a box from its lower left. */
export interface WallMark {
  /** Short text at it; may be empty. */
  text: string
  /** From the wall's left end, and over the finished floor, mm. */
  fromLeft: Mm
  height: Mm
  /** Size where it is more than a point, mm. */
  size?: { width: Mm; height: Mm }
  /** Drawn dashed: it is there before, or hidden. */
  dashed?: boolean
}

/** A wall to be drawn, with what stands or lies on it. */
export interface WallOnPaper {
  wall: Wall
  marks: readonly WallMark[]
  /** Drawn under the wall's own lines, mm from its left end and over the finished floor. */
  under?: readonly Shape[]
}

/** Walls drawn side by side, and the sentence for the caption: `Walls 2 and 4 from inside`. */
export interface WallRow {
  drawing: Drawing
  caption: string
}

interface Elevations {
  room: Pick<Room, "id">
  /** How far the finished floor stands over the room's datum, mm. */
  floor: Mm
  walls: readonly WallOnPaper[]
}

/** Walls in one row, with the gaps between them, may be this long: 1:50 on an upright sheet, mm. */
const longestRow: Mm = 8500
/** Between two walls of a row, mm. */
const between: Mm = 700
/** Middle of a wall's name under its foot, mm. */
const nameUnder: Mm = 170
/** Half the side of the square that stands for a point, mm. */
const pointHalf: Mm = 43
/** Middle of a point's number over its middle, mm. */
const labelOver: Mm = 150
/** Height of lettering on paper, mm. */
const lettering: Mm = 2.5

/** Walls seen from inside with openings and marks, true to scale, as many in a row as fit a sheet; heights from the finished floor. */
export function wallRows({ room, floor, walls }: Elevations): WallRow[] {
  return inRows(walls).map((row) => {
    const lefts = row.map((_, index) => row.slice(0, index).reduce((sum, each) => sum + placeOf(each), 0))
    const numbers = row.map(({ wall }) => String(wall.number))
    const named = `${row.length > 1 ? "Walls" : "Wall"} ${numbers.join(", ").replace(/, (?=[^,]*$)/, " and ")}`
    const count = row.reduce((sum, each) => sum + each.marks.length, 0)
    return {
      caption: `${named} from inside`,
      drawing: {
        title: `${named}, ${room.id}`,
        description: `${named} of ${room.id} from inside, ${count} things marked; heights from the finished floor.`,
        shapes: [
          ...row.flatMap((each, index) =>
            wallShapes(each, floor, row.length > 1).map((shape) => shifted(shape, lefts[index]!)),
          ),
          { kind: "scale-bar" },
        ],
      },
    }
  })
}

function placeOf({ wall }: WallOnPaper): Mm {
  return wall.length + between
}

function inRows(walls: readonly WallOnPaper[]): WallOnPaper[][] {
  const rows: WallOnPaper[][] = []
  let taken = 0
  for (const each of walls) {
    const row = rows[rows.length - 1]
    if (row && taken + each.wall.length <= longestRow) row.push(each)
    else {
      rows.push([each])
      taken = 0
    }
    taken += placeOf(each)
  }
  return rows
}

function wallShapes({ wall, marks, under }: WallOnPaper, floor: Mm, isNamed: boolean): Shape[] {
  const outline = wall.elevation.map(({ x, y }) => ({ x, y: y - floor }))
  const openings = [
    ...wall.doors.map((each) => ({ ...each, id: each.door.id, sill: floor, height: each.height - floor })),
    ...wall.windows,
  ].flatMap((each) => opening({ ...each, sill: each.sill - floor }))
  const name: Shape = {
    kind: "text",
    at: { x: wall.length / 2, y: -nameUnder },
    text: `wall ${wall.number}`,
    height: lettering,
    fixed: true,
  }
  return [
    ...(under ?? []),
    { kind: "polygon", points: outline, stroke: { width: 0.5 } },
    {
      kind: "line",
      from: { x: 0, y: 0 },
      to: { x: wall.length, y: 0 },
      stroke: { width: 0.25, dash: "chain" },
    },
    ...openings,
    ...marks.flatMap(markShapes),
    ...(isNamed ? [name] : []),
  ]
}

/** A shape moved to the right, mm. */
function shifted(shape: Shape, by: Mm): Shape {
  const to = <P extends { x: Mm; y: Mm }>(point: P): P => ({ ...point, x: point.x + by })
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
        ...(shape.holes ? { holes: shape.holes.map((hole) => hole.map(to)) } : {}),
      }
    case "arc":
      return { ...shape, centre: to(shape.centre) }
    case "box":
    case "text":
      return { ...shape, at: to(shape.at) }
    case "hatch": {
      const { outline, holes } = shape.region
      return { ...shape, region: { outline: outline.map(to), holes: holes.map((hole) => hole.map(to)) } }
    }
    case "scale-bar":
      return shape.at ? { ...shape, at: to(shape.at) } : shape
  }
}

function opening(of: { id: string; fromLeft: Mm; sill: Mm; width: Mm; height: Mm }): Shape[] {
  const { id, fromLeft, sill, width, height } = of
  const middle = { x: fromLeft + width / 2, y: sill + height / 2 }
  return [
    { kind: "box", at: { x: fromLeft, y: sill }, width, height, stroke: { width: 0.35 }, fill: "white" },
    { kind: "text", at: middle, text: id, height: lettering, fixed: true },
  ]
}

function markShapes({ text, fromLeft, height, size, dashed }: WallMark): Shape[] {
  const at = size ? { x: fromLeft, y: height } : { x: fromLeft - pointHalf, y: height - pointHalf }
  const { width, height: high } = size ?? { width: 2 * pointHalf, height: 2 * pointHalf }
  const stroke = dashed ? ({ width: 0.25, dash: "dashed" } as const) : ({ width: 0.35 } as const)
  const label = { x: at.x + width / 2, y: size ? at.y + high / 2 : height + labelOver }
  const box: Shape = { kind: "box", at, width, height: high, stroke, fill: size ? "none" : "black" }
  if (text === "") return [box]
  return [box, { kind: "text", at: label, text, height: lettering, masked: true }]
}
