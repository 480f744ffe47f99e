import type { RoomFile } from "../intake/schema/room.ts"
import { difference, halfPlane, intersection, union } from "../kernels/polygon/clip.ts"
import { contains } from "../kernels/polygon/inside.ts"
import { centroid, regionArea, regionCentroid } from "../kernels/polygon/measure.ts"
import type { Point } from "../kernels/polygon/point.ts"
import { type Region, regionOf } from "../kernels/polygon/region.ts"
import { type Mm, squareMetres } from "../kernels/units.ts"
import { inwardNormal, rectangleOff } from "./plan-geometry.ts"
import type { CeilingPart, WindowInRoom } from "./room.ts"

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

/** A boxed part or a beam below the ceiling: its plan and its underside, mm from the room's datum. */
export interface Bulkhead {
  name: string
  plan: Point[]
  height: Mm
}

/**
 * The surfaces over a room: the ceiling is the lowest plane at each point, raised in a dormer to the dormer's own level, and
 * brought down by a bulkhead to its underside.
 */
export interface Overhead {
  planes: Plane[]
  dormers: Dormer[]
  bulkheads: Bulkhead[]
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
    const top = Math.min(dormer.height, level)
    const reach = Math.max(0, top - slope.dwarf) / Math.tan((slope.pitch * Math.PI) / 180)
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
  return { planes: [flat, ...slopes], dormers, bulkheads: bulkheadsOf(ceiling, ends) }
}

function bulkheadsOf(ceiling: RoomFile["ceiling"], ends: (wall: number) => [Point, Point]): Bulkhead[] {
  return ceiling.obstacles.flatMap((obstacle): Bulkhead[] => {
    const { wall, depth, width, fromLeft, off, name, height } = obstacle
    if (wall === undefined || depth === undefined) return []
    const [start, end] = ends(wall)
    const to = width === undefined ? Math.hypot(end.x - start.x, end.y - start.y) : fromLeft + width
    return [{ name, height, plan: rectangleOff(start, end, { from: fromLeft, to, off, depth }) }]
  })
}

/** Height of a plane over a point, mm from the datum. */
export function planeHeight(plane: Plane, point: Point): Mm {
  return plane.at + plane.dx * point.x + plane.dy * point.y
}

/** Height of the ceiling over a point of the plan, mm from the datum; never below it. */
export function ceilingHeight({ planes, dormers, bulkheads }: Overhead, point: Point): Mm {
  const under = Math.min(...planes.map((plane) => planeHeight(plane, point)))
  const inDormer = dormers.filter(({ plan }) => isOver(plan, point)).map(({ height }) => height)
  const inBulkhead = bulkheads.filter(({ plan }) => isOver(plan, point)).map(({ height }) => height)
  const raised = inDormer.length > 0 ? Math.max(...inDormer) : under
  return Math.max(0, Math.min(raised, ...inBulkhead))
}

function isOver(plan: readonly Point[], point: Point): boolean {
  return contains(regionOf(plan), point)
}

/** The level and sloping parts of the ceiling over an outline, with true areas; roof windows are taken out of the net ones. */
export function ceilingParts(
  outline: Region,
  over: Overhead,
  roofWindows: readonly { plan: Point[]; area: number }[] = [],
): CeilingPart[] {
  const lowered = loweredOver(outline, over)
  const dormerPlans = over.dormers.map((dormer) => regionOf(dormer.plan))
  const taken = [...dormerPlans, ...lowered.map(({ region }) => region)]
  const open = over.planes.flatMap((plane) =>
    without(lowestUnder(plane, over.planes, [outline]), taken).map((region) =>
      partOf(plane, region, roofWindows),
    ),
  )
  const dormers = over.dormers.flatMap((dormer) =>
    without(
      intersection([outline], [regionOf(dormer.plan)]),
      lowered.map(({ region }) => region),
    ).map((region) => levelPart("dormer", region, dormer)),
  )
  const bulkheads = lowered.map(({ region, height }) => levelPart("bulkhead", region, { height }))
  return [...open, ...dormers, ...bulkheads].filter((part) => part.area > 0)
}

/** Where bulkheads bring the ceiling down, each with its underside; of two that overlap the lower one counts. */
function loweredOver(outline: Region, over: Overhead): { region: Region; height: Mm }[] {
  const found: { region: Region; height: Mm }[] = []
  for (const { plan, height } of [...over.bulkheads].sort((a, b) => a.height - b.height)) {
    const under = higherThan(outline, { ...over, bulkheads: [] }, height)
    const here = intersection(under, [regionOf(plan)])
    const left = without(
      here,
      found.map(({ region }) => region),
    )
    found.push(...left.map((region) => ({ region, height })))
  }
  return found
}

function without(regions: readonly Region[], taken: readonly Region[]): Region[] {
  return taken.length > 0 && regions.length > 0 ? difference(regions, taken) : [...regions]
}

function partOf(
  plane: Plane,
  region: Region,
  roofWindows: readonly { plan: Point[]; area: number }[],
): CeilingPart {
  const planArea = squareMetres(regionArea(region))
  const area = planArea / Math.cos((plane.pitch * Math.PI) / 180)
  const windows = plane.kind === "slope" ? roofWindows : []
  const out = windows
    .filter((window) => contains(region, centroid(window.plan)))
    .reduce((sum, window) => sum + window.area, 0)
  return {
    kind: plane.kind,
    wall: plane.wall,
    pitch: plane.pitch,
    plan: [...region.outline],
    area,
    net: Math.max(0, area - out),
    planArea,
    meanHeight: planeHeight(plane, regionCentroid(region)),
  }
}

function levelPart(
  kind: "dormer" | "bulkhead",
  region: Region,
  { wall, height }: { wall?: number; height: Mm },
): CeilingPart {
  const area = squareMetres(regionArea(region))
  return {
    kind,
    wall,
    pitch: 0,
    plan: [...region.outline],
    area,
    net: area,
    planArea: area,
    meanHeight: height,
  }
}

/** The plan of a roof window in its slope, and its area, m2. */
export function roofWindowPlan(
  window: WindowInRoom,
  pitch: number,
  [start, end]: [Point, Point],
): { plan: Point[]; area: number } {
  const level = Math.cos((pitch * Math.PI) / 180)
  const { fromLeft, width, height, sill } = window
  const box = { from: fromLeft, to: fromLeft + width, off: sill * level, depth: height * level }
  return { plan: rectangleOff(start, end, box), area: squareMetres(width * height) }
}

/** Where on the plan the ceiling is higher than a level from the datum. */
export function higherThan(outline: Region, over: Overhead, level: Mm): Region[] {
  const dormerPlans = over.dormers
    .filter((dormer) => dormer.height > level)
    .map((dormer) => regionOf(dormer.plan))
  const open = over.planes.reduce(
    (regions, plane) => regions.flatMap((region) => higher(plane, level, region)),
    [outline],
  )
  const inDormers = dormerPlans.length > 0 ? intersection([outline], dormerPlans) : []
  const all = inDormers.length > 0 ? union([...open, ...inDormers]) : open
  const low = over.bulkheads.filter(({ height }) => height <= level).map(({ plan }) => regionOf(plan))
  return without(all, low)
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
