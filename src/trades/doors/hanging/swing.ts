import { boundsOf } from "../../../kernels/polygon/measure.ts"
import { cosSin, distanceToSegment, type Point } from "../../../kernels/polygon/point.ts"
import type { Degrees, Mm } from "../../../kernels/units.ts"
import type { CeilingPart, DoorInWall, Room, Wall } from "../../../survey/room.ts"

/** A leaf as it swings in plan. */
export interface Swing {
  hinge: Point
  width: Mm
  /** Direction of the closed leaf from the hinge, and sense of opening: +1 anticlockwise. */
  closed: Degrees
  sense: 1 | -1
}

/** Where a leaf's top corner meets the slope, or the least it clears it by. */
export interface Sweep {
  /** Opening angle from closed, degrees, at which it is tightest. */
  at: Degrees
  /** Height of the ceiling over the leaf's edge there, from the room's datum, mm. */
  ceiling: Mm
}

/** Steps of the swing tried, degrees, and places along the leaf. */
const angleStep: Degrees = 3
const openTo: Degrees = 90
const alongSteps = 4

/** The swing of a door that opens into this room. Hinges left or right are as seen from the room; walls run clockwise, so the inside lies to the right. */
export function swingOf(here: DoorInWall, room: Room, hinges: "left" | "right"): Swing | null {
  const wall = room.walls.find((each) => each.number === here.wall)
  if (!wall) return null
  const along = (Math.atan2(wall.end.y - wall.start.y, wall.end.x - wall.start.x) * 180) / Math.PI
  const off = hinges === "left" ? here.fromLeft : here.fromLeft + here.width
  const { cos, sin } = cosSin(along)
  const hinge = { x: wall.start.x + cos * off, y: wall.start.y + sin * off }
  return hinges === "left"
    ? { hinge, width: here.width, closed: along, sense: -1 }
    : { hinge, width: here.width, closed: along + 180, sense: 1 }
}

/** The tightest place under the room's slopes over the whole swing to 90 degrees; null where no slope lies over it. */
export function sweepUnderSlopes(swing: Swing, room: Room): Sweep | null {
  let tightest: Sweep | null = null
  for (let open = 0; open <= openTo; open += angleStep) {
    for (let step = 1; step <= alongSteps; step++) {
      const at = leafPoint(swing, open, (swing.width * step) / alongSteps)
      const ceiling = slopeOver(at, room)
      if (ceiling !== null && (tightest === null || ceiling < tightest.ceiling))
        tightest = { at: open, ceiling }
    }
  }
  return tightest
}

/** True if two leaves that swing into the same room can meet. */
export function leavesMeet(a: Swing, b: Swing): boolean {
  if (Math.hypot(a.hinge.x - b.hinge.x, a.hinge.y - b.hinge.y) >= a.width + b.width) return false
  return (
    sectorPoints(a).some((point) => inSector(point, b)) || sectorPoints(b).some((point) => inSector(point, a))
  )
}

/** Clear distance from the hinge side of the opening to the wall beside it, mm. */
export function besideHinge(here: DoorInWall, wall: Wall, hinges: "left" | "right"): Mm {
  return hinges === "left" ? here.fromLeft : wall.length - here.fromLeft - here.width
}

/** Height of the lowest slope over a point from the room's datum, mm; null where none lies over it. */
function slopeOver(point: Point, room: Room): Mm | null {
  const heights = room.ceiling.parts
    .filter((part) => part.kind === "slope" && isOver(part, point))
    .flatMap((part) => {
      const wall = room.walls.find((each) => each.number === part.wall)
      if (!wall) return []
      const run = distanceToSegment(point, wall.start, wall.end)
      return [dwarfHeight(wall) + run * Math.tan((part.pitch * Math.PI) / 180)]
    })
  return heights.length > 0 ? Math.min(...heights) : null
}

function dwarfHeight(wall: Wall): Mm {
  const tops = wall.elevation.filter((corner) => corner.y > 0).map((corner) => corner.y)
  return tops.length > 0 ? Math.min(...tops) : 0
}

function isOver(part: CeilingPart, point: Point): boolean {
  const box = boundsOf(part.plan)
  if (point.x < box.left || point.x > box.right || point.y < box.bottom || point.y > box.top) return false
  return isInside(part.plan, point)
}

function isInside(ring: readonly Point[], { x, y }: Point): boolean {
  let inside = false
  ring.forEach((a, n) => {
    const b = ring[(n + 1) % ring.length]!
    if (a.y > y !== b.y > y && x < ((b.x - a.x) * (y - a.y)) / (b.y - a.y) + a.x) inside = !inside
  })
  return inside
}

function leafPoint(swing: Swing, open: Degrees, reach: Mm): Point {
  const { cos, sin } = cosSin(swing.closed + swing.sense * open)
  return { x: swing.hinge.x + cos * reach, y: swing.hinge.y + sin * reach }
}

function sectorPoints(swing: Swing): Point[] {
  const points: Point[] = []
  for (let open = angleStep; open <= openTo; open += angleStep) {
    for (let step = 1; step <= alongSteps; step++) {
      points.push(leafPoint(swing, open, (swing.width * step) / alongSteps))
    }
  }
  return points
}

function inSector(point: Point, swing: Swing): boolean {
  const dx = point.x - swing.hinge.x
  const dy = point.y - swing.hinge.y
  if (Math.hypot(dx, dy) > swing.width) return false
  const turned = swing.sense * ((Math.atan2(dy, dx) * 180) / Math.PI - swing.closed)
  const open = ((turned % 360) + 360) % 360
  return open > angleStep / 2 && open <= openTo
}
