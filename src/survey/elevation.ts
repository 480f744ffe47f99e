import { between, type Point } from "../kernels/polygon/point.ts"
import type { Mm } from "../kernels/units.ts"
import { ceilingHeight, type Overhead, planeHeight } from "./ceiling.ts"
import { offWall } from "./plan-geometry.ts"

/** What stands over a wall is looked up this far inside it, mm. */
const justInside: Mm = 1
/** Stretches of a wall shorter than this are left out of its top, mm. */
const shortest: Mm = 0.01

/**
 * The true elevation of a wall seen from inside: x from its left end, y from the room's datum, mm, anticlockwise from the
 * bottom left. Its top edge follows the ceiling: the lowest plane, raised in a dormer, brought down under a bulkhead.
 */
export function wallElevation(start: Point, end: Point, over: Overhead): Point[] {
  const length = Math.hypot(end.x - start.x, end.y - start.y)
  const wall = { start, end }
  const stops = stopsAlong(wall, length, over)
  const top = stops.slice(0, -1).flatMap((from, index) => {
    const to = stops[index + 1]!
    const height = (share: number) => {
      const inside = from + (to - from) * share
      return ceilingHeight(over, offWall(wall, inside, justInside)) + backToWall(wall, inside, over)
    }
    // Within a stretch the top is straight: two heights inside it give both ends without touching a step.
    const [quarter, most] = [height(1 / (2 * 2)), height(1 - 1 / (2 * 2))]
    const half = (most - quarter) / 2
    return [
      { x: from, y: Math.max(0, quarter - half) },
      { x: to, y: Math.max(0, most + half) },
    ]
  })
  return simplified([{ x: 0, y: 0 }, { x: length, y: 0 }, ...top.reverse()])
}

/** Height of the wall's top over a length from its left end, mm from the datum; the lower one at a step. */
export function heightOver(elevation: readonly Point[], x: Mm): Mm {
  const top = topOf(elevation)
  const found = top.slice(0, -1).flatMap((right, index) => {
    const left = top[index + 1]!
    if (x > right.x || x < left.x) return []
    if (right.x === left.x) return [Math.min(right.y, left.y)]
    return [between(left, right, (x - left.x) / (right.x - left.x)).y]
  })
  return found.length > 0 ? Math.min(...found) : (top[top.length - 1]?.y ?? 0)
}

/** The top from right to left; where the ceiling comes down to the datum at an end, the bottom corner belongs to it. */
function topOf(elevation: readonly Point[]): Point[] {
  const [left, right, ...top] = elevation
  if (!left || !right) return []
  const first = top[0]
  const last = top[top.length - 1]
  return [
    ...(first && first.x < right.x - shortest ? [right] : []),
    ...top,
    ...(last && last.x > left.x + shortest ? [left] : []),
  ]
}

interface WallLine {
  start: Point
  end: Point
}

/** The lowest plane on the wall's own line less the one just inside it: heights are looked up inside, and belong to the wall. */
function backToWall(wall: WallLine, x: Mm, { planes, dormers, bulkheads }: Overhead): Mm {
  const inside = offWall(wall, x, justInside)
  const under = Math.min(...planes.map((plane) => planeHeight(plane, inside)))
  const shown = ceilingHeight({ planes, dormers, bulkheads }, inside)
  if (Math.abs(shown - under) > shortest) return 0
  return Math.min(...planes.map((plane) => planeHeight(plane, offWall(wall, x, 0)))) - under
}

/** Ends of the straight stretches of a wall's top: where planes cross, and where dormers and bulkheads begin and end. */
function stopsAlong(wall: WallLine, length: Mm, over: Overhead): Mm[] {
  const lines = over.planes.map((plane) => {
    const atStart = planeHeight(plane, wall.start)
    return { atStart, rise: (planeHeight(plane, wall.end) - atStart) / length }
  })
  const levels = over.bulkheads.map(({ height }) => ({ atStart: height, rise: 0 }))
  const edges = [...over.dormers, ...over.bulkheads].flatMap(({ plan }) => edgeCrossings(wall, plan))
  const all = [...crossings([...lines, ...levels]), ...edges]
    .filter((x) => x > shortest && x < length - shortest)
    .sort((a, b) => a - b)
  return [0, ...all.filter((x, index) => index === 0 || x - all[index - 1]! > shortest), length]
}

function crossings(lines: { atStart: Mm; rise: number }[]): Mm[] {
  return lines.flatMap((a, index) =>
    lines.slice(index + 1).flatMap((b) => {
      const x = (b.atStart - a.atStart) / (a.rise - b.rise)
      return Number.isFinite(x) ? [x] : []
    }),
  )
}

/** Where the edges of a figure on the plan cross the line just inside a wall, as lengths from its left end. */
function edgeCrossings(wall: WallLine, plan: readonly Point[]): Mm[] {
  const from = offWall(wall, 0, justInside)
  const to = offWall(wall, 1, justInside)
  const along = { x: to.x - from.x, y: to.y - from.y }
  return plan.flatMap((a, index) => {
    const b = plan[(index + 1) % plan.length]!
    const off = (point: Point) => (point.x - from.x) * along.y - (point.y - from.y) * along.x
    const [here, there] = [off(a), off(b)]
    if (here > 0 === there > 0) return []
    const at = between(a, b, here / (here - there))
    return [(at.x - from.x) * along.x + (at.y - from.y) * along.y]
  })
}

/** Without corners that are doubled or lie on the straight between their neighbours. */
function simplified(points: Point[]): Point[] {
  const distinct = points.filter((point, index) => {
    const before = points[(index + points.length - 1) % points.length]!
    return Math.hypot(point.x - before.x, point.y - before.y) > shortest
  })
  return distinct.filter((point, index) => {
    const before = distinct[(index + distinct.length - 1) % distinct.length]!
    const after = distinct[(index + 1) % distinct.length]!
    const cross = (point.x - before.x) * (after.y - point.y) - (point.y - before.y) * (after.x - point.x)
    return index < 2 || Math.abs(cross) > shortest
  })
}
