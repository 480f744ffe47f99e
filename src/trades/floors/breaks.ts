import { difference } from "../../kernels/polygon/clip.ts"
import { boundsOf } from "../../kernels/polygon/measure.ts"
import { distanceToSegment, type Point } from "../../kernels/polygon/point.ts"
import { edgesOf, type Region, regionOf } from "../../kernels/polygon/region.ts"
import { sectionAt } from "../../kernels/polygon/strips.ts"
import { type Mm, roundHalfUp } from "../../kernels/units.ts"
import type { Room, Wall } from "../../survey/room.ts"
import { wallFrame } from "./area.ts"
import type { FloorInputs } from "./inputs.ts"
import { fromFrame, toFrame } from "./layout/frame.ts"

/** A movement break: a straight line square to a wall, from there across the floor to where it ends. */
export interface Break {
  /** From 1, as they are written. */
  number: number
  wall: number
  fromLeft: Mm
  /** Its ends at the walls, on the plan. */
  from: Point
  to: Point
  length: Mm
}

/** Where the breaks of a room lie on a floor; those that do not lie on it are left out. @param floor to the walls, on the plan */
export function breaksOn(room: Room, input: FloorInputs, floor: readonly Region[]): Break[] {
  return input.breaks.flatMap(({ wall: number, fromLeft }, index): Break[] => {
    const wall = room.walls.find((candidate) => candidate.number === number)
    if (!wall || fromLeft <= 0 || fromLeft >= wall.length) return []
    const reach = reachFrom(wall, fromLeft, floor)
    if (!reach) return []
    const [from, to] = fromFrame(wallFrame(wall), [
      { x: fromLeft, y: reach.from },
      { x: fromLeft, y: reach.to },
    ]) as [Point, Point]
    return [{ number: index + 1, wall: number, fromLeft, from, to, length: reach.to - reach.from }]
  })
}

/** A floor parted along its breaks: `half` is left free on each side of a line. */
export function partedBy(breaks: readonly Break[], floor: readonly Region[], half: Mm): Region[] {
  if (breaks.length === 0) return [...floor]
  return difference(
    floor,
    breaks.map((each) => stripOf(each, Math.max(half, hair))),
  )
}

/** Size of the largest field along and across the boards, to 0.1 mm: one figure each way over all fields. */
export function largestField(wall: Wall, fields: readonly Region[]): { along: Mm; across: Mm } {
  const boxes = fields.map((field) => boundsOf(toFrame(wallFrame(wall), field.outline)))
  return {
    along: roundHalfUp(Math.max(...boxes.map((box) => box.right - box.left)), 1),
    across: roundHalfUp(Math.max(...boxes.map((box) => box.top - box.bottom)), 1),
  }
}

/** Of walls along which a floor is held, those that hold a field which another of them holds too. */
export function heldTogether(walls: readonly Wall[], fields: readonly Region[]): Wall[] {
  const held = fields.map((field) => walls.filter((wall) => lies(wall, field)))
  return walls.filter((wall) => held.some((own) => own.length > 1 && own.includes(wall)))
}

/** Where to write breaks so that no field is longer than it may be: equal fields along a wall that runs the way of the run. */
export function breaksToWrite(
  wall: Wall,
  floor: readonly Region[],
  most: Mm,
): { wall: number; fromLeft: Mm }[] {
  const box = boundsOf(floor.flatMap((region) => toFrame(wallFrame(wall), region.outline)))
  const fields = Math.ceil((box.right - box.left) / most)
  return Array.from({ length: fields - 1 }, (_, index) => ({
    wall: wall.number,
    fromLeft: Math.round(box.left + ((index + 1) * (box.right - box.left)) / fields),
  })).filter(({ fromLeft }) => fromLeft > 0 && fromLeft < wall.length)
}

/** Figures are parted by at least so much, mm. */
const hair: Mm = 0.01
/** A wall bounds a field if it runs this near to its edge, mm. */
const onEdge: Mm = 1

/** The stretch of floor that a line square to a wall crosses first, mm from that wall. */
function reachFrom(wall: Wall, fromLeft: Mm, floor: readonly Region[]): { from: Mm; to: Mm } | null {
  const turned = floor.map((region) => {
    const ring = (points: readonly Point[]) =>
      toFrame(wallFrame(wall), points).map(({ x, y }): Point => ({ x: y, y: x }))
    return { outline: ring(region.outline), holes: region.holes.map(ring) }
  })
  const stretches = turned
    .flatMap((region) => sectionAt(region, fromLeft))
    .filter((stretch) => stretch.to > onEdge)
    .sort((a, b) => a.from - b.from)
  return stretches[0] ?? null
}

/** A strip over a break, run out past both ends so that nothing hangs together there. */
function stripOf({ from, to, length }: Break, half: Mm): Region {
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length }
  const out = half + onEdge
  const corner = (end: Point, by: Mm, side: Mm): Point => ({
    x: end.x + along.x * by - along.y * side,
    y: end.y + along.y * by + along.x * side,
  })
  return regionOf([
    corner(from, -out, half),
    corner(to, out, half),
    corner(to, out, -half),
    corner(from, -out, -half),
  ])
}

function lies(wall: Wall, field: Region): boolean {
  const places = [1 / 6, 1 / 2, 5 / 6].map((share) => ({
    x: wall.start.x + (wall.end.x - wall.start.x) * share,
    y: wall.start.y + (wall.end.y - wall.start.y) * share,
  }))
  return places.some((place) =>
    edgesOf(field.outline).some(({ from, to }) => distanceToSegment(place, from, to) < onEdge),
  )
}
