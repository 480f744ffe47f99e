import type { Drawing, Shape } from "../kernels/drawing/shapes.ts"
import { between, type Point } from "../kernels/polygon/point.ts"
import { type Mm, mmText } from "../kernels/units.ts"
import { inwardNormal } from "./plan-geometry.ts"
import type { DoorInWall, Room, Wall } from "./room.ts"

/** Distance of dimension lines outside the wall, and of wall numbers inside it, on paper and in the room. */
const dimensionOffset = 9
const shortWall = 500
const numberInside = 230

/**
 * The plan of a room as surveyed: walls with numbers and lengths, openings with their swing, holes, cupboards and the
 * lines where slopes begin. Millimetres of the room.
 */
export function roomPlan(room: Room): Drawing {
  const shapes: Shape[] = [
    { kind: "polygon", points: room.outline, fill: "white", stroke: { width: 0.7 } },
    ...slopeLines(room),
    ...room.holes.flatMap(holeShapes),
    ...room.walls.flatMap((wall) => [...openings(wall, room), ...wallText(wall)]),
    { kind: "scale-bar" },
  ]
  return {
    title: `Plan of ${room.name}`,
    description: `Plan of ${room.name}, ${room.walls.length} walls numbered clockwise from the entry; ${room.walls
      .map((wall) => `wall ${wall.number} ${mmText(wall.length)} mm`)
      .join(", ")}.`,
    shapes,
  }
}

function wallText(wall: Wall): Shape[] {
  const inward = inwardNormal(wall.start, wall.end)
  const middle = between(wall.start, wall.end, freeShare(wall))
  const shapes: Shape[] = [
    { kind: "dimension", from: wall.start, to: wall.end, offset: dimensionOffset, text: mmText(wall.length) },
  ]
  if (wall.length < shortWall && wall.is === "wall") return shapes
  const at = { x: middle.x + inward.x * numberInside, y: middle.y + inward.y * numberInside }
  shapes.push({ kind: "text", at, text: String(wall.number), height: 3.5, bold: true, masked: true })
  return shapes
}

/** Where along a wall its number stands clear of doors: the middle, or the middle of the longest stretch beside them. */
function freeShare(wall: Wall): number {
  const stops = wall.doors.flatMap((door) => [door.fromLeft, door.fromLeft + door.width])
  const ends = [0, ...stops.sort((a, b) => a - b), wall.length]
  let best = { from: 0, to: 0 }
  for (let index = 0; index + 1 < ends.length; index += 2) {
    const [from, to] = [ends[index]!, ends[index + 1]!]
    if (to - from > best.to - best.from) best = { from, to }
  }
  return (best.from + best.to) / 2 / wall.length
}

function slopeLines(room: Room): Shape[] {
  return room.ceiling.parts
    .filter((part) => part.kind !== "flat")
    .map((part): Shape => ({ kind: "polygon", points: part.plan, stroke: { width: 0.18, dash: "dashed" } }))
}

function holeShapes(hole: Room["holes"][number]): Shape[] {
  const centre = between(hole.outline[0]!, hole.outline[2]!, 1 / 2)
  const outline: Shape = {
    kind: "polygon",
    points: hole.outline,
    stroke: { width: hole.floored ? 0.25 : 0.5, dash: hole.floored ? "dashed" : "continuous" },
  }
  const cross: Shape[] = hole.floored
    ? []
    : [0, 1].map((index) => ({
        kind: "line",
        from: hole.outline[index]!,
        to: hole.outline[index + 2]!,
        stroke: { width: 0.25 },
      }))
  return [outline, ...cross, { kind: "text", at: centre, text: hole.name, height: 2.5, masked: true }]
}

function openings(wall: Wall, room: Room): Shape[] {
  return [
    ...wall.doors.flatMap((door) => doorShapes(door, wall, room)),
    ...wall.windows.flatMap((window) => windowShapes(wall, window.fromLeft, window.width)),
  ]
}

function doorShapes(door: DoorInWall, wall: Wall, room: Room): Shape[] {
  const left = along(wall, door.fromLeft)
  const right = along(wall, door.fromLeft + door.width)
  const inward = inwardNormal(wall.start, wall.end)
  const gap: Shape = { kind: "line", from: left, to: right, stroke: { width: 0.18 } }
  const label: Shape = {
    kind: "text",
    at: {
      x: (left.x + right.x) / 2 + inward.x * numberInside,
      y: (left.y + right.y) / 2 + inward.y * numberInside,
    },
    text: door.door.id,
    height: 2.5,
    masked: true,
  }
  const cover: Shape = { kind: "polygon", points: band(left, right, inward, 40), fill: "white" }
  if (door.door.swingsInto !== room.id || !door.door.hinges) return [cover, gap, label]
  const hingeLeft = door.door.hinges === "left"
  const hinge = hingeLeft ? left : right
  const latch = hingeLeft ? right : left
  const open = { x: hinge.x + inward.x * door.width, y: hinge.y + inward.y * door.width }
  return [
    cover,
    gap,
    { kind: "line", from: hinge, to: open, stroke: { width: 0.5 } },
    swing(hinge, latch, open),
    label,
  ]
}

/** A quarter circle from the closed leaf's edge to the open leaf's edge. */
function swing(hinge: Point, latch: Point, open: Point): Shape {
  const angle = (point: Point) => (Math.atan2(point.y - hinge.y, point.x - hinge.x) * 180) / Math.PI
  const closed = angle(latch)
  const turned = angle(open)
  const anticlockwise = (((turned - closed) % 360) + 360) % 360 <= 180
  return {
    kind: "arc",
    centre: hinge,
    radius: Math.hypot(latch.x - hinge.x, latch.y - hinge.y),
    from: anticlockwise ? closed : turned,
    to: anticlockwise ? turned : closed,
    stroke: { width: 0.18 },
  }
}

function windowShapes(wall: Wall, fromLeft: Mm, width: Mm): Shape[] {
  const left = along(wall, fromLeft)
  const right = along(wall, fromLeft + width)
  const inward = inwardNormal(wall.start, wall.end)
  return [{ kind: "polygon", points: band(left, right, inward, 40), fill: "white", stroke: { width: 0.25 } }]
}

function band(left: Point, right: Point, inward: Point, half: Mm): Point[] {
  return [
    { x: left.x + inward.x * half, y: left.y + inward.y * half },
    { x: right.x + inward.x * half, y: right.y + inward.y * half },
    { x: right.x - inward.x * half, y: right.y - inward.y * half },
    { x: left.x - inward.x * half, y: left.y - inward.y * half },
  ]
}

function along(wall: Wall, length: Mm): Point {
  return between(wall.start, wall.end, length / wall.length)
}
