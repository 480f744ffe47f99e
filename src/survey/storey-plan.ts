import type { Finding } from "../kernels/finding.ts"
import { intersection } from "../kernels/polygon/clip.ts"
import { boundsOf, regionArea } from "../kernels/polygon/measure.ts"
import { distance, type Point } from "../kernels/polygon/point.ts"
import { regionOf } from "../kernels/polygon/region.ts"
import { type Mm, mmText, squareMetres } from "../kernels/units.ts"
import type { Rules } from "../rulebook/rules.ts"
import { offWall, unitAlong } from "./plan-geometry.ts"
import type { DoorInWall, House, Room, Storey } from "./room.ts"

/** Where a room stands on its storey: its own plan turned, then moved. */
export interface Placing {
  cos: number
  sin: number
  dx: Mm
  dy: Mm
}

/** A room in its place on the storey. */
export interface PlacedRoom {
  room: Room
  placing: Placing
  outline: Point[]
}

/** The rooms of one storey placed together by the openings they share. */
export interface StoreyPlan {
  storey: Storey
  rooms: PlacedRoom[]
  /** Rooms that no shared opening ties to the others. */
  unplaced: Room[]
}

/** One side of an opening that two rooms of a storey share. */
interface Side {
  room: Room
  here: DoorInWall
}

/**
 * Each storey's rooms placed together: from the room with most openings, each next room stands with its side of a shared
 * opening behind the other's, a wall's thickness apart.
 */
export function storeyPlans(house: Pick<House, "storeys" | "rooms">): StoreyPlan[] {
  return house.storeys.flatMap((storey) => {
    const rooms = house.rooms.filter((room) => room.storey.id === storey.id)
    return rooms.length > 0 ? [placedTogether(storey, rooms)] : []
  })
}

/** Openings whose two sides do not agree within the wall's thickness, and rooms that would stand in one another. */
export function storeyFindings(plan: StoreyPlan, rules: Rules): Finding[] {
  return [...disagreements(plan), ...overlaps(plan, squareMillimetres(rules.value("survey-storey-overlap")))]
}

/** A point of a room's own plan on the storey. */
export function placedPoint({ cos, sin, dx, dy }: Placing, { x, y }: Point): Point {
  return { x: x * cos - y * sin + dx, y: x * sin + y * cos + dy }
}

function placedTogether(storey: Storey, rooms: readonly Room[]): StoreyPlan {
  const first = rooms.reduce((most, room) =>
    shared(room, rooms).length > shared(most, rooms).length ? room : most,
  )
  const placed = new Map<Room, Placing>([[first, { cos: 1, sin: 0, dx: 0, dy: 0 }]])
  const queue = [first]
  for (let room = queue.shift(); room; room = queue.shift()) {
    for (const [here, there] of shared(room, rooms)) {
      if (placed.has(there.room)) continue
      const placing = placingBehind(placed.get(room)!, here, there)
      if (!placing) continue
      placed.set(there.room, placing)
      queue.push(there.room)
    }
  }
  return {
    storey,
    rooms: rooms.flatMap((room) => {
      const placing = placed.get(room)
      return placing
        ? [{ room, placing, outline: room.outline.map((corner) => placedPoint(placing, corner)) }]
        : []
    }),
    unplaced: rooms.filter((room) => !placed.has(room)),
  }
}

/** The openings a room shares with others of its storey, this side and that side. */
function shared(room: Room, rooms: readonly Room[]): [Side, Side][] {
  return room.doors.flatMap((here): [Side, Side][] => {
    const other = rooms.find((each) => each !== room && here.door.between.includes(each.id))
    const there = other?.doors.find((each) => each.door.id === here.door.id)
    return other && there
      ? [
          [
            { room, here },
            { room: other, here: there },
          ],
        ]
      : []
  })
}

function placingBehind(placing: Placing, here: Side, there: Side): Placing | null {
  const wall = wallOf(here)
  const back = wallOf(there)
  if (!wall || !back) return null
  const along = unitAlong(wall.start, wall.end)
  const run = {
    x: along.x * placing.cos - along.y * placing.sin,
    y: along.x * placing.sin + along.y * placing.cos,
  }
  const other = unitAlong(back.start, back.end)
  // The other room's wall runs the other way: its direction is turned to the opposite of this one's.
  const cos = -(run.x * other.x + run.y * other.y)
  const sin = -(run.y * other.x - run.x * other.y)
  const target = placedPoint(placing, middleBehind(here))
  const source = placedPoint({ cos, sin, dx: 0, dy: 0 }, middleOf(there))
  return { cos, sin, dx: target.x - source.x, dy: target.y - source.y }
}

function wallOf({ room, here }: Side) {
  return room.walls.find((wall) => wall.number === here.wall)
}

/** Middle of an opening on the face of its wall. */
function middleOf(side: Side): Point {
  return offWall(wallOf(side)!, side.here.fromLeft + side.here.width / 2, 0)
}

/** The same on the wall's other face. */
function middleBehind(side: Side): Point {
  return offWall(wallOf(side)!, side.here.fromLeft + side.here.width / 2, -side.here.door.wall)
}

function disagreements({ rooms }: StoreyPlan): Finding[] {
  const own = rooms.map(({ room }) => room)
  return rooms.flatMap(({ room, placing }, index) =>
    shared(room, own).flatMap(([here, there]): Finding[] => {
      const other = rooms.findIndex((each) => each.room === there.room)
      if (other < index || !wallOf(here) || !wallOf(there)) return []
      const from = placedPoint(placing, middleBehind(here))
      const to = placedPoint(rooms[other]!.placing, middleOf(there))
      const off = distance(from, to)
      if (off <= here.here.door.wall) return []
      const { id } = here.here.door
      return [
        {
          code: "opening-sides-disagree",
          severity: "warning",
          at: { file: there.room.file, path: ["doors", there.room.doors.indexOf(there.here), "fromLeft"] },
          message: `Doorway ${id}: its place in ${room.id} and its place in ${there.room.id} are ${mmText(off)} mm apart when the rooms of the storey are put together.`,
          expected: `within the wall's thickness, ${mmText(here.here.door.wall)} mm`,
          mend: "Tape the opening again from both sides, and the other openings between these rooms.",
        },
      ]
    }),
  )
}

function overlaps({ rooms }: StoreyPlan, most: number): Finding[] {
  return rooms.flatMap((one, index) =>
    rooms.slice(index + 1).flatMap((other): Finding[] => {
      if (areApart(one.outline, other.outline)) return []
      const common = intersection([regionOf(one.outline)], [regionOf(other.outline)])
      const area = common.reduce((sum, region) => sum + regionArea(region), 0)
      if (area <= most) return []
      return [
        {
          code: "rooms-overlap",
          severity: "warning",
          at: { file: other.room.file, path: ["outline"] },
          message: `Put together by their openings, ${one.room.id} and ${other.room.id} would stand in one another over ${squareMetres(area).toFixed(1)} m2.`,
          mend: "Tape again how far each opening stands from the left end of its wall.",
        },
      ]
    }),
  )
}

function areApart(a: readonly Point[], b: readonly Point[]): boolean {
  const [one, other] = [boundsOf(a), boundsOf(b)]
  return (
    one.right <= other.left || other.right <= one.left || one.top <= other.bottom || other.top <= one.bottom
  )
}

function squareMillimetres(area: number): number {
  return area / squareMetres(1)
}
