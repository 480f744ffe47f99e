import type { PolygonShape, Shape, Stroke } from "../../kernels/drawing/shapes.ts"
import { contains } from "../../kernels/polygon/inside.ts"
import { boundsOf } from "../../kernels/polygon/measure.ts"
import { distanceToSegment, type Point } from "../../kernels/polygon/point.ts"
import { edgesOf, regionOf } from "../../kernels/polygon/region.ts"
import type { Mm } from "../../kernels/units.ts"
import { inwardNormal, offWall } from "../plan-geometry.ts"
import type { DoorInWall, Room, Wall } from "../room.ts"

/** Half the breadth of the white gap that an opening makes in the line of a wall, mm of the room. */
const halfGap: Mm = 40

/** A text that finds its own place near a point, smaller figures for names, larger ones to work from. */
export function label(at: Point, text: string, height: 2.5 | 3.5 = 2.5): Shape {
  return { kind: "text", at, text, height, masked: true, leader: true }
}

/** A zone in which nothing may be fixed: chained outline, hatched, with what lies in it. */
export function noFixZone(points: readonly Point[], text: string): Shape[] {
  return [
    { kind: "hatch", region: regionOf(points), spacing: 1.5, angle: 45, width: 0.18 },
    { kind: "polygon", points, stroke: { width: 0.35, dash: "chain" } },
    label(middle(points), text),
  ]
}

/** An opening without its leaf: the wall's line broken, a thin line across. */
export function gapInWall(wall: Wall, opening: { fromLeft: Mm; width: Mm }): Shape[] {
  const { fromLeft, width } = opening
  return [
    { kind: "polygon", points: across(wall, fromLeft, fromLeft + width), fill: "white" },
    {
      kind: "line",
      from: offWall(wall, fromLeft, 0),
      to: offWall(wall, fromLeft + width, 0),
      stroke: { width: 0.18 },
    },
  ]
}

/** A window on the plan: a box across the line of the wall. */
export function windowOnPlan(wall: Wall, { fromLeft, width }: { fromLeft: Mm; width: Mm }): PolygonShape {
  return {
    kind: "polygon",
    points: across(wall, fromLeft, fromLeft + width),
    fill: "white",
    stroke: { width: 0.25 },
  }
}

/** The open leaf and the quarter circle of its edge, where the leaf swings into the room; else nothing. */
export function leafOnPlan(door: DoorInWall, wall: Wall, room: Pick<Room, "id">): Shape[] {
  if (door.door.swingsInto !== room.id || !door.door.hinges) return []
  const left = offWall(wall, door.fromLeft, 0)
  const right = offWall(wall, door.fromLeft + door.width, 0)
  const [hinge, latch] = door.door.hinges === "left" ? [left, right] : [right, left]
  const inward = inwardNormal(wall.start, wall.end)
  const open = { x: hinge.x + inward.x * door.width, y: hinge.y + inward.y * door.width }
  return [{ kind: "line", from: hinge, to: open, stroke: { width: 0.5 } }, swing(hinge, latch, open)]
}

/** The box across a wall's line from one length along it to another. */
function across(wall: Wall, from: Mm, to: Mm): Point[] {
  return [
    offWall(wall, from, halfGap),
    offWall(wall, to, halfGap),
    offWall(wall, to, -halfGap),
    offWall(wall, from, -halfGap),
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

/** Points tried across a figure, each way, for the roomiest one. */
const tries = 13

/** A point well inside a figure and outside its holes, for its name: of a grid of points the one furthest from all edges. */
export function roomiest(outline: readonly Point[], holes: readonly (readonly Point[])[] = []): Point {
  const box = boundsOf(outline)
  const region = { outline, holes }
  const edges = [outline, ...holes].flatMap(edgesOf)
  let best = { at: middle(outline), clear: 0 }
  for (let column = 1; column < tries; column++) {
    for (let row = 1; row < tries; row++) {
      const at = {
        x: box.left + ((box.right - box.left) * column) / tries,
        y: box.bottom + ((box.top - box.bottom) * row) / tries,
      }
      if (!contains(region, at)) continue
      const clear = Math.min(...edges.map(({ from, to }) => distanceToSegment(at, from, to)))
      if (clear > best.clear + 1) best = { at, clear }
    }
  }
  return best.at
}

/** The middle of the longest stretch of a wall beside its doors, and beside all its openings if told, from its left end, mm. */
export function freeLength(wall: Wall, besides: "doors" | "all" = "doors"): Mm {
  const openings = besides === "all" ? [...wall.doors, ...wall.windows] : wall.doors
  const taken = openings
    .map(({ fromLeft, width }) => ({ from: fromLeft, to: fromLeft + width }))
    .sort((a, b) => a.from - b.from)
  let best = { from: 0, to: 0 }
  let at = 0
  for (const { from, to } of [...taken, { from: wall.length, to: wall.length }]) {
    if (from - at > best.to - best.from) best = { from: at, to: from }
    at = Math.max(at, to)
  }
  return (best.from + best.to) / 2
}

/** The mean of some points. */
export function middle(points: readonly Point[]): Point {
  const sum = points.reduce((total, point) => ({ x: total.x + point.x, y: total.y + point.y }), {
    x: 0,
    y: 0,
  })
  return { x: sum.x / points.length, y: sum.y / points.length }
}

/** A stroke of a width on paper, broken as said. */
export function stroke(width: Stroke["width"], dash: Stroke["dash"] = "continuous"): Stroke {
  return dash === "continuous" ? { width } : { width, dash }
}
