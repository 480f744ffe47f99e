import type { Degrees, Mm } from "../../kernels/units.ts"
import { inwardNormal, unitAlong } from "../../survey/plan-geometry.ts"
import type { HoleInFloor, Room, Wall } from "../../survey/room.ts"
import { type CornerEnd, externalEnd, internalEnd, returnEnd, squareEnd } from "./corners.ts"

/** One run of skirting along a wall, between corners, architraves and wells. */
export interface Run {
  wall: Wall
  /** From the wall's left end, mm. */
  from: Mm
  to: Mm
  left: CornerEnd
  right: CornerEnd
}

/** Where skirting stops on a wall besides its corners: the outer edges of an architrave or a plinth block. */
export interface Stop {
  wall: number
  outerFrom: Mm
  outerTo: Mm
}

/** What the runs of a room are found from. */
export interface RunsTask {
  room: Room
  thickness: Mm
  /** Widest inside angle that is scribed, degrees. */
  scribed: Degrees
  /** Walls that take no skirting. */
  without: readonly number[]
  stops: readonly Stop[]
}

const square = squareEnd()
const againstArchitrave: CornerEnd = { ...square, cut: { as: "against-architrave", setting: 0 } }

/** A hole's side this close to a wall's line stands against it, mm. */
const against: Mm = 1

/**
 * The runs of skirting of a room, wall by wall, left to right as one faces the wall. Open edges and wardrobe fronts take none; nor
 * does a wall along a well, where the stair's string stands. A run stops at architraves; where the next wall is an open edge its end
 * is returned.
 */
export function runsOfRoom(task: RunsTask): Run[] {
  return skirtedWalls(task).flatMap((wall) => runsOfWall(wall, task))
}

/** Stretches of a wall that lie along holes without a floor (a stair well), mm from its left end. */
export function wellsAlong(wall: Wall, holes: readonly HoleInFloor[]): { from: Mm; to: Mm }[] {
  const along = unitAlong(wall.start, wall.end)
  const inward = inwardNormal(wall.start, wall.end)
  return holes
    .filter((hole) => !hole.floored)
    .flatMap((hole) => {
      const places = hole.outline
        .map((corner) => ({ x: corner.x - wall.start.x, y: corner.y - wall.start.y }))
        .filter(({ x, y }) => Math.abs(x * inward.x + y * inward.y) < against)
        .map(({ x, y }) => x * along.x + y * along.y)
      const from = Math.max(0, Math.min(...places))
      const to = Math.min(wall.length, Math.max(...places))
      return places.length > 1 && to - from > against ? [{ from, to }] : []
    })
}

function skirtedWalls({ room, without }: RunsTask): Wall[] {
  return room.walls.filter((wall) => isSkirted(wall) && !without.includes(wall.number))
}

function isSkirted(wall: Wall): boolean {
  return wall.is !== "open-edge" && wall.is !== "wardrobe"
}

interface Gap {
  from: Mm
  to: Mm
  end: CornerEnd
}

function runsOfWall(wall: Wall, task: RunsTask): Run[] {
  const { room, stops } = task
  const before = room.walls[(wall.number + room.walls.length - 2) % room.walls.length]!
  const after = room.walls[wall.number % room.walls.length]!
  const leftEnd = endAt(wall.angleAtStart, task, { other: before, at: "end", fixed: "second" })
  const rightEnd = endAt(wall.angleAtEnd, task, { other: after, at: "start", fixed: "first" })
  const gaps: Gap[] = [
    ...stops
      .filter((stop) => stop.wall === wall.number)
      .map((stop) => ({ from: stop.outerFrom, to: stop.outerTo, end: againstArchitrave })),
    ...wellsAlong(wall, room.holes).map((well) => ({ ...well, end: square })),
  ].sort((a, b) => a.from - b.from)
  const runs: Run[] = []
  let from: Mm = 0
  let left = leftEnd
  for (const gap of gaps) {
    if (gap.from > from + against) runs.push({ wall, from, to: gap.from, left, right: gap.end })
    if (gap.to > from) left = gap.end
    from = Math.max(from, gap.to)
  }
  if (wall.length > from + against) runs.push({ wall, from, to: wall.length, left, right: rightEnd })
  return runs
}

interface Meeting {
  other: Wall
  /** Which end of the other wall lies at the corner. */
  at: "start" | "end"
  fixed: "first" | "second"
}

function endAt(angle: number, task: RunsTask, { other, at, fixed }: Meeting): CornerEnd {
  const { thickness, scribed, room, without } = task
  if (other.is === "open-edge") return returnEnd(thickness)
  const meets = isSkirted(other) && !without.includes(other.number) && !startsInWell(other, at, room)
  if (!meets) return square
  return angle > 180 ? externalEnd(angle, thickness) : internalEnd(angle, thickness, { fixed, scribed })
}

function startsInWell(wall: Wall, at: "start" | "end", room: Room): boolean {
  return wellsAlong(wall, room.holes).some(({ from, to }) =>
    at === "start" ? from < against : to > wall.length - against,
  )
}
