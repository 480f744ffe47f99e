import { difference, inset, union } from "../../kernels/polygon/clip.ts"
import { regionArea } from "../../kernels/polygon/measure.ts"
import type { Point } from "../../kernels/polygon/point.ts"
import { type Region, regionOf } from "../../kernels/polygon/region.ts"
import { type Mm, type SquareMetres, squareMetres } from "../../kernels/units.ts"
import type { Rules } from "../../rulebook/rules.ts"
import type { DoorInWall, HoleInFloor, Room, Wall } from "../../survey/room.ts"
import { type Frame, frameOf, fromFrame } from "./layout/frame.ts"

/** Where a floor ends in a doorway. */
export interface DoorwayEnd {
  door: string
  name: string
  wall: number
  /** From the room's face of the wall into the doorway, mm: the line of the profile. */
  depth: Mm
  hasLining: boolean
}

/** What is floored. */
export interface FloorArea {
  /** To the walls and into the doorways, m2 as figures on the plan. */
  whole: Region[]
  /** The same less the gap all round: what boards cover. */
  laid: Region[]
  doorways: DoorwayEnd[]
  /** Holes that stay open, and cupboards the floor runs into. */
  open: HoleInFloor[]
  runsInto: HoleInFloor[]
}

/** A pocket overlaps the room by this much, so that figures join, mm. */
const lap: Mm = 1

/**
 * The true outline that boards cover: the room less its open holes, with the pockets of its doorways, less the gap all round.
 * A doorway is floored to the line under the closed leaf (half the wall where there is no leaf); under an undercut lining
 * boards run on by `floor-tuck-under-lining`, and the gap lies hidden there.
 * @param into ids of holes that are floored besides those surveyed so
 */
export function floorArea(
  room: Room,
  options: { gap: Mm; into: readonly string[] },
  rules: Rules,
): FloorArea {
  const runsInto = room.holes.filter((hole) => hole.floored || options.into.includes(hole.id))
  const open = room.holes.filter((hole) => !runsInto.includes(hole))
  const doorways = room.doors.map((door) => doorwayEnd(room, door, rules))
  const pockets = room.doors.map((door, index) =>
    pocket(room, door, { end: doorways[index]!, gap: options.gap }, rules),
  )
  const joined = union([regionOf(room.outline), ...pockets])
  const whole = difference(
    joined,
    open.map((hole) => regionOf(hole.outline)),
  )
  return { whole, laid: whole.flatMap((region) => inset(region, options.gap)), doorways, open, runsInto }
}

/** Area of figures, m2, unrounded. */
export function areaOfAll(regions: readonly Region[]): SquareMetres {
  return squareMetres(regions.reduce((sum, region) => sum + regionArea(region), 0))
}

/** The frame of a wall: along it from its left end, and from it into the room. */
export function wallFrame(wall: Wall): Frame {
  return frameOf(wall.start, wall.end)
}

function doorwayEnd(room: Room, { door, wall }: DoorInWall, rules: Rules): DoorwayEnd {
  const leaf = Math.min(rules.value("floor-under-leaf"), door.wall)
  const depth =
    door.swingsInto === undefined ? door.wall / 2 : door.swingsInto === room.id ? leaf : door.wall - leaf
  return { door: door.id, name: door.name, wall, depth, hasLining: door.lining !== "none" }
}

function pocket(room: Room, door: DoorInWall, at: { end: DoorwayEnd; gap: Mm }, rules: Rules): Region {
  const wall = room.walls.find((candidate) => candidate.number === door.wall)!
  const under = at.end.hasLining ? rules.value("floor-tuck-under-lining") + at.gap : 0
  const left = door.fromLeft - under
  const right = door.fromLeft + door.width + under
  const corners: Point[] = [
    { x: left, y: -at.end.depth },
    { x: right, y: -at.end.depth },
    { x: right, y: lap },
    { x: left, y: lap },
  ]
  return regionOf(fromFrame(wallFrame(wall), corners))
}
