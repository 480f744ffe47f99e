import type { Point } from "../kernels/polygon/point.ts"
import type { Mm } from "../kernels/units.ts"

/** Unit vector into the room from a wall walked left to right (clockwise walk, inside on the right hand). */
export function inwardNormal(start: Point, end: Point): Point {
  const along = unitAlong(start, end)
  return { x: along.y, y: -along.x }
}

/** Unit vector along a wall from its left end to its right; to the right along x if the wall has no length. */
export function unitAlong(start: Point, end: Point): Point {
  const length = Math.hypot(end.x - start.x, end.y - start.y)
  if (length === 0) return { x: 1, y: 0 }
  return { x: (end.x - start.x) / length, y: (end.y - start.y) / length }
}

/** The point at a length along a wall from its left end and a distance into the room, mm. */
export function offWall({ start, end }: { start: Point; end: Point }, length: Mm, away: Mm): Point {
  const along = unitAlong(start, end)
  const inward = inwardNormal(start, end)
  return {
    x: start.x + along.x * length + inward.x * away,
    y: start.y + along.y * length + inward.y * away,
  }
}

/** The rectangle standing off a wall: from one length along it to another, and some distance into the room. */
export function rectangleOff(
  start: Point,
  end: Point,
  box: { from: Mm; to: Mm; off: Mm; depth: Mm },
): Point[] {
  const { from, to, off, depth } = box
  const wall = { start, end }
  return [
    offWall(wall, from, off),
    offWall(wall, to, off),
    offWall(wall, to, off + depth),
    offWall(wall, from, off + depth),
  ]
}
