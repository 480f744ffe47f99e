import type { RoomFile } from "../intake/schema/room.ts"
import { difference, halfPlane, intersection } from "../kernels/polygon/clip.ts"
import { regionArea } from "../kernels/polygon/measure.ts"
import type { Point } from "../kernels/polygon/point.ts"
import { type Region, regionOf } from "../kernels/polygon/region.ts"
import { type Mm, squareMetres } from "../kernels/units.ts"
import type { CeilingPart } from "./room.ts"

/** A plane over the floor plan: height = at + x·dx + y·dy, mm from the room's datum. */
export interface Plane {
  kind: "flat" | "slope"
  wall?: number
  pitch: number
  at: Mm
  dx: number
  dy: number
}

/** A dormer's plan and its own level ceiling, mm from the room's datum. */
export interface Dormer {
  wall: number
  plan: Point[]
  height: Mm
  /** Length of wall it takes, from the wall's left end, mm. */
  from: Mm
  to: Mm
  /** How far it reaches into the room: from the dwarf wall to where its ceiling meets the slope, mm. */
  reach: Mm
}

/** The surfaces over a room: the ceiling is the lowest plane at each point, raised in a dormer to the dormer's own level. */
export interface Overhead {
  planes: Plane[]
  dormers: Dormer[]
}

/** The planes and dormers of a ceiling over adjusted walls; the level part stands at the mean of its taped heights. */
export function overhead(ceiling: RoomFile["ceiling"], ends: (wall: number) => [Point, Point]): Overhead {
  const level = ceiling.heights.reduce((sum, height) => sum + height, 0) / ceiling.heights.length
  const flat: Plane = { kind: "flat", pitch: 0, at: level, dx: 0, dy: 0 }
  const slopes = ceiling.slopes.map((slope): Plane => {
    const [start, end] = ends(slope.wall)
    const inward = inwardNormal(start, end)
    const rise = Math.tan((slope.pitch * Math.PI) / 180)
    const dx = inward.x * rise
    const dy = inward.y * rise
    return {
      kind: "slope",
      wall: slope.wall,
      pitch: slope.pitch,
      at: slope.dwarf - dx * start.x - dy * start.y,
      dx,
      dy,
    }
  })
  const dormers = ceiling.dormers.flatMap((dormer): Dormer[] => {
    const slope = ceiling.slopes.find((each) => each.wall === dormer.wall)
    if (!slope) return []
    const [start, end] = ends(dormer.wall)
    const reach = Math.max(0, dormer.height - slope.dwarf) / Math.tan((slope.pitch * Math.PI) / 180)
    const to = dormer.fromLeft + dormer.width
    return [
      {
        wall: dormer.wall,
        height: dormer.height,
        from: dormer.fromLeft,
        to,
        reach,
        plan: rectangleOff(start, end, { from: dormer.fromLeft, to, off: 0, depth: reach }),
      },
    ]
  })
  return { planes: [flat, ...slopes], dormers }
}

/** Height of a plane over a point, mm from the datum. */
export function planeHeight(plane: Plane, point: Point): Mm {
  return plane.at + plane.dx * point.x + plane.dy * point.y
}

/** The level and sloping parts of the ceiling over an outline, with true areas. */
export function ceilingParts(outline: Region, over: Overhead): CeilingPart[] {
  const dormerPlans = over.dormers.map((dormer) => regionOf(dormer.plan))
  const parts = over.planes.flatMap((plane) => {
    const whole = lowestUnder(plane, over.planes, [outline])
    const regions = dormerPlans.length > 0 ? difference(whole, dormerPlans) : whole
    return regions.map(
      (region): CeilingPart => ({
        kind: plane.kind,
        wall: plane.wall,
        pitch: plane.pitch,
        plan: [...region.outline],
        area: squareMetres(regionArea(region)) / Math.cos((plane.pitch * Math.PI) / 180),
      }),
    )
  })
  const dormers = over.dormers.flatMap((dormer) =>
    intersection([outline], [regionOf(dormer.plan)]).map(
      (region): CeilingPart => ({
        kind: "dormer",
        wall: dormer.wall,
        pitch: 0,
        plan: [...region.outline],
        area: squareMetres(regionArea(region)),
      }),
    ),
  )
  return [...parts, ...dormers].filter((part) => part.area > 0)
}

/** Plan area where the ceiling is higher than a level, mm2. */
export function areaHigherThan(outline: Region, over: Overhead, level: Mm): number {
  const dormerPlans = over.dormers
    .filter((dormer) => dormer.height > level)
    .map((dormer) => regionOf(dormer.plan))
  const all = over.planes.reduce(
    (regions, plane) => regions.flatMap((region) => higher(plane, level, region)),
    [outline],
  )
  const outsideDormers = dormerPlans.length > 0 ? difference(all, dormerPlans) : all
  const inDormers = dormerPlans.length > 0 ? intersection([outline], dormerPlans) : []
  return [...outsideDormers, ...inDormers].reduce((sum, region) => sum + regionArea(region), 0)
}

function lowestUnder(plane: Plane, planes: readonly Plane[], regions: Region[]): Region[] {
  return planes
    .filter((other) => other !== plane)
    .reduce((left, other) => {
      const gap: Plane = {
        ...plane,
        at: other.at - plane.at,
        dx: other.dx - plane.dx,
        dy: other.dy - plane.dy,
      }
      return left.flatMap((region) => higher(gap, 0, region))
    }, regions)
}

/** What of a region lies where a plane is higher than a level. */
function higher(plane: Plane, level: Mm, region: Region): Region[] {
  const steep = Math.hypot(plane.dx, plane.dy)
  if (steep < 1e-9) return plane.at > level ? [region] : []
  const back = (level - plane.at) / steep ** 2
  const on = { x: plane.dx * back, y: plane.dy * back }
  const ahead = { x: on.x + (plane.dy / steep) * 1000, y: on.y - (plane.dx / steep) * 1000 }
  return halfPlane(region, on, ahead, "left")
}

/** Unit vector into the room from a wall walked left to right (clockwise walk, inside on the right hand). */
export function inwardNormal(start: Point, end: Point): Point {
  const along = unit(start, end)
  return { x: along.y, y: -along.x }
}

/** The rectangle standing off a wall: from one length along it to another, and some distance into the room. */
export function rectangleOff(
  start: Point,
  end: Point,
  box: { from: Mm; to: Mm; off: Mm; depth: Mm },
): Point[] {
  const { from, to, off, depth } = box
  const along = unit(start, end)
  const inward = inwardNormal(start, end)
  const place = (length: Mm, away: Mm): Point => ({
    x: start.x + along.x * length + inward.x * away,
    y: start.y + along.y * length + inward.y * away,
  })
  return [place(from, off), place(to, off), place(to, off + depth), place(from, off + depth)]
}

function unit(start: Point, end: Point): Point {
  const length = Math.hypot(end.x - start.x, end.y - start.y)
  return { x: (end.x - start.x) / length, y: (end.y - start.y) / length }
}
