import type { Drawing, Shape } from "../../kernels/drawing/shapes.ts"
import { boundsOf } from "../../kernels/polygon/measure.ts"
import { between, type Point } from "../../kernels/polygon/point.ts"
import { fixed, type Mm, mmText } from "../../kernels/units.ts"
import { offWall } from "../plan-geometry.ts"
import type { DoorInWall, Wall } from "../room.ts"
import { type PlacedRoom, placedPoint, type StoreyPlan } from "../storey-plan.ts"
import { label, middle, roomiest, stroke, windowOnPlan } from "./pieces.ts"

/** Distance of the overall dimensions from the outermost walls, mm on paper. */
const overallOffset = 8

/**
 * The rooms of a storey in their places: outlines, holes, openings through the walls with a line where the floors meet (none
 * in an open way: the floor runs through), names, areas, overall sizes.
 */
export function storeyDrawing({ storey, rooms }: StoreyPlan): Drawing {
  const box = boundsOf(rooms.flatMap(({ outline }) => outline))
  const corners = {
    left: { x: box.left, y: box.top },
    right: { x: box.right, y: box.top },
    low: { x: box.left, y: box.bottom },
  }
  return {
    title: `Plan of the ${storey.name.toLowerCase()}`,
    description: `The rooms of the ${storey.name.toLowerCase()} in their places: ${rooms.map(({ room }) => `${room.id} ${room.name}`).join(", ")}.`,
    shapes: [
      ...rooms.map(
        ({ outline }): Shape => ({ kind: "polygon", points: outline, fill: "white", stroke: stroke(0.5) }),
      ),
      ...rooms.flatMap(inside),
      ...passages(rooms),
      ...rooms.flatMap(names),
      {
        kind: "dimension",
        from: corners.left,
        to: corners.right,
        offset: overallOffset,
        text: mmText(box.right - box.left),
      },
      {
        kind: "dimension",
        from: corners.low,
        to: corners.left,
        offset: overallOffset,
        text: mmText(box.top - box.bottom),
      },
      { kind: "scale-bar" },
    ],
  }
}

/** Rooms narrower than this carry their id alone, mm. */
const small: Mm = 1500

function isSmall(outline: readonly Point[]): boolean {
  const { left, right, bottom, top } = boundsOf(outline)
  return Math.min(right - left, top - bottom) < small
}

function inside({ room, placing }: PlacedRoom): Shape[] {
  const at = (point: Point) => placedPoint(placing, point)
  const holes = room.holes.flatMap((hole): Shape[] => {
    const points = hole.outline.map(at)
    const outline: Shape = {
      kind: "polygon",
      points,
      stroke: stroke(0.25, hole.floored ? "dashed" : "continuous"),
    }
    if (hole.floored) return [outline]
    return [outline, { kind: "line", from: points[0]!, to: points[2]!, stroke: stroke(0.18) }]
  })
  const windows = room.walls.flatMap((wall) =>
    wall.windows.map((window): Shape => {
      const box = windowOnPlan(wall, window)
      return { ...box, points: box.points.map(at) }
    }),
  )
  return [...holes, ...windows]
}

/** The way through the wall at each opening, once, with its name; and the line under the leaf where two floors meet. */
function passages(rooms: readonly PlacedRoom[]): Shape[] {
  const seen = new Set<string>()
  return rooms.flatMap((placed) =>
    placed.room.walls.flatMap((wall) =>
      wall.doors.flatMap((door): Shape[] => {
        if (seen.has(door.door.id)) return []
        seen.add(door.door.id)
        return passage(placed, wall, door)
      }),
    ),
  )
}

function passage({ room, placing }: PlacedRoom, wall: Wall, { door, fromLeft, width }: DoorInWall): Shape[] {
  const at = (length: number, away: number) => placedPoint(placing, offWall(wall, length, away))
  const to = fromLeft + width
  const way = [at(fromLeft, 0), at(to, 0), at(to, -door.wall), at(fromLeft, -door.wall)]
  const share = door.swingsInto === room.id ? 0 : door.swingsInto === undefined ? 1 / 2 : 1
  const threshold: Shape = {
    kind: "line",
    from: between(way[0]!, way[3]!, share),
    to: between(way[1]!, way[2]!, share),
    stroke: stroke(0.35),
  }
  return [
    { kind: "polygon", points: way, fill: "white" },
    { kind: "line", from: way[0]!, to: way[3]!, stroke: stroke(0.25) },
    { kind: "line", from: way[1]!, to: way[2]!, stroke: stroke(0.25) },
    ...(door.lining === "none" ? [] : [threshold]),
    label(middle(way), door.id),
  ]
}

function names({ room, outline, placing }: PlacedRoom): Shape[] {
  const open = room.holes
    .filter(({ floored }) => !floored)
    .map((hole) => hole.outline.map((corner) => placedPoint(placing, corner)))
  return [
    {
      kind: "text",
      at: roomiest(outline, open),
      text: isSmall(outline) ? room.id : `${room.id}\n${fixed(room.floorArea, 2)} m²`,
      height: 2.5,
      bold: true,
      masked: true,
      leader: true,
    },
  ]
}
