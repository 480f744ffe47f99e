import { between, type Point } from "../kernels/polygon/point.ts"
import type { Mm } from "../kernels/units.ts"
import { type Overhead, planeHeight } from "./ceiling.ts"

/**
 * The true elevation of a wall seen from inside: x from its left end, y from the room's datum, mm, anticlockwise from the
 * bottom left. Its top edge follows the lowest plane over the wall, raised where a dormer stands in it.
 */
export function wallElevation(wall: number, start: Point, end: Point, over: Overhead): Point[] {
  const length = Math.hypot(end.x - start.x, end.y - start.y)
  const lines = over.planes.map((plane) => {
    const atStart = planeHeight(plane, start)
    return { atStart, rise: (planeHeight(plane, end) - atStart) / length }
  })
  const dormers = over.dormers.filter((dormer) => dormer.wall === wall)
  const heightAt = (x: Mm) => Math.max(0, Math.min(...lines.map((line) => line.atStart + line.rise * x)))
  const stops = [0, length, ...crossings(lines, length)].sort((a, b) => a - b)
  const top = stops
    .filter((x) => !dormers.some((dormer) => x > dormer.from && x < dormer.to))
    .map((x) => ({ x, y: heightAt(x) }))
  for (const dormer of dormers) top.push(...dormerEdge(dormer, heightAt))
  top.sort((a, b) => a.x - b.x)
  return simplified([{ x: 0, y: 0 }, { x: length, y: 0 }, ...top.reverse()])
}

/** Height of the wall's top over a length from its left end, mm from the datum. */
export function heightOver(elevation: readonly Point[], x: Mm): Mm {
  const top = elevation.slice(2)
  for (let index = 0; index + 1 < top.length; index++) {
    const right = top[index]!
    const left = top[index + 1]!
    if (x <= right.x && x >= left.x) {
      if (right.x === left.x) return Math.min(right.y, left.y)
      return between(left, right, (x - left.x) / (right.x - left.x)).y
    }
  }
  return top[top.length - 1]?.y ?? 0
}

function dormerEdge(dormer: { from: Mm; to: Mm; height: Mm }, heightAt: (x: Mm) => Mm): Point[] {
  return [
    { x: dormer.from, y: heightAt(dormer.from) },
    { x: dormer.from, y: dormer.height },
    { x: dormer.to, y: dormer.height },
    { x: dormer.to, y: heightAt(dormer.to) },
  ]
}

function crossings(lines: { atStart: Mm; rise: number }[], length: Mm): Mm[] {
  const found: Mm[] = []
  for (const [index, a] of lines.entries()) {
    for (const b of lines.slice(index + 1)) {
      const x = (b.atStart - a.atStart) / (a.rise - b.rise)
      if (Number.isFinite(x) && x > 0 && x < length) found.push(x)
    }
  }
  return found
}

/** Without corners that are doubled or lie on the straight between their neighbours. */
function simplified(points: Point[]): Point[] {
  const distinct = points.filter((point, index) => {
    const before = points[(index + points.length - 1) % points.length]!
    return Math.hypot(point.x - before.x, point.y - before.y) > 1e-6
  })
  return distinct.filter((point, index) => {
    const before = distinct[(index + distinct.length - 1) % distinct.length]!
    const after = distinct[(index + 1) % distinct.length]!
    const cross = (point.x - before.x) * (after.y - point.y) - (point.y - before.y) * (after.x - point.x)
    return index < 2 || Math.abs(cross) > 1e-3
  })
}
