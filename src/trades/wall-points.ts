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

interface Elevation {
  room: Pick<Room, "id">
  wall: Wall
  /** How far the finished floor stands over the room's datum, mm. */
  floor: Mm
  marks: readonly WallMark[]
}

/** Half the side of the square that stands for a point, mm. */
const pointHalf: Mm = 43
/** Middle of a point's number over its middle, mm. */
const labelOver: Mm = 150
/** Height of lettering on paper, mm. */
const lettering: Mm = 2.5

/** A wall seen from inside with its openings and marks, true to scale; heights from the finished floor. */
export function wallDrawing({ room, wall, floor, marks }: Elevation): Drawing {
  const outline = wall.elevation.map(({ x, y }) => ({ x, y: y - floor }))
  const openings = [
    ...wall.doors.map((each) => ({ ...each, id: each.door.id, sill: floor, height: each.height - floor })),
    ...wall.windows,
  ].flatMap((each) => opening({ ...each, sill: each.sill - floor }))
  const shapes: Shape[] = [
    { kind: "polygon", points: outline, stroke: { width: 0.5 } },
    {
      kind: "line",
      from: { x: 0, y: 0 },
      to: { x: wall.length, y: 0 },
      stroke: { width: 0.25, dash: "chain" },
    },
    ...openings,
    ...marks.flatMap(markShapes),
    { kind: "scale-bar" },
  ]
  return {
    title: `Wall ${wall.number}, ${room.id}`,
    description: `Wall ${wall.number} of ${room.id} from inside, ${marks.length} things marked; heights from the finished floor.`,
    shapes,
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
