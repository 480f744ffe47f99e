import type { Degrees } from "../units.ts"
import { signedArea } from "./measure.ts"
import type { Point } from "./point.ts"
import type { Ring } from "./region.ts"

/**
 * The turn made at each corner of a walk round an outline, degrees in (-180, 180]: right positive, left negative.
 * Index i is the turn at corner i, between the edge that arrives and the edge that leaves. A simple clockwise walk sums to 360.
 */
export function turnsOf(ring: Ring): Degrees[] {
  return ring.map((corner, index) => {
    const before = ring[(index + ring.length - 1) % ring.length]!
    const after = ring[(index + 1) % ring.length]!
    return turnAt(before, corner, after)
  })
}

/** The angle inside the outline at each corner, degrees in (0, 360), whichever way round it is walked. */
export function interiorAngles(ring: Ring): Degrees[] {
  const clockwise = signedArea(ring) < 0
  return turnsOf(ring).map((turn) => (clockwise ? 180 - turn : 180 + turn))
}

/** The turn at a corner on the way from one point to the next, degrees: right positive, left negative. */
export function turnAt(before: Point, corner: Point, after: Point): Degrees {
  const arrive = { x: corner.x - before.x, y: corner.y - before.y }
  const leave = { x: after.x - corner.x, y: after.y - corner.y }
  const sine = leave.x * arrive.y - arrive.x * leave.y
  const cosine = arrive.x * leave.x + arrive.y * leave.y
  return (Math.atan2(sine, cosine) * 180) / Math.PI
}

/** The same outline walked clockwise (y up), starting at the same corner. */
export function clockwise(ring: Ring): Point[] {
  return signedArea(ring) <= 0 ? [...ring] : reversedFromFirst(ring)
}

/** The same outline walked anticlockwise (y up), starting at the same corner. */
export function anticlockwise(ring: Ring): Point[] {
  return signedArea(ring) >= 0 ? [...ring] : reversedFromFirst(ring)
}

function reversedFromFirst(ring: Ring): Point[] {
  const [first, ...rest] = ring
  return first ? [first, ...rest.reverse()] : []
}
