import type { Degrees, Mm } from "../../kernels/units.ts"
import type { EndCut } from "../trade.ts"

/** Angles are told apart to this: less off square, an end is sawn square and the joint closed with the plane, degrees. */
const nearSquare = 0.5
const rightAngle: Degrees = 90

const radians = (degrees: Degrees) => (degrees * Math.PI) / 180

/** One end of a skirting at a corner: how it is cut, and how far its long point lies beyond (or short of) the corner along the wall. */
export interface CornerEnd {
  cut: EndCut
  /** Added to the wall's length at this end for the long point, mm; negative where the board stops short. */
  reach: Mm
  /** How much shorter than the long point the other face is, mm. */
  short: Mm
}

/** How an internal corner is made: which board is fixed first, and beyond which angle both are mitred. */
export interface InternalCorner {
  fixed: "first" | "second"
  /** Widest inside angle that is scribed, degrees. */
  scribed: Degrees
}

/**
 * A skirting's end at an internal corner of a room. The board that is fixed first runs into the corner, bevelled where it is out of
 * square: t tan(90 - a) off its face in a tight corner, t tan(a - 90) on to it in a wide one. The second is scribed over its face, so it
 * stops short (at the back t / sin a, at the face t / tan(a/2); the longer of the two is sawn and the scribe follows the face). Corners
 * wider than can be scribed are mitred on both boards at half the turn, the backs meeting in the corner. Plane trigonometry.
 * @param angle inside angle of the room, degrees, under 180
 */
export function internalEnd(angle: Degrees, thickness: Mm, { fixed, scribed }: InternalCorner): CornerEnd {
  if (angle > scribed + nearSquare) {
    const setting = (2 * rightAngle - angle) / 2
    return { cut: { as: "internal-mitre", setting }, reach: 0, short: thickness * Math.tan(radians(setting)) }
  }
  if (fixed === "second") {
    const reach = -Math.min(thickness / Math.sin(radians(angle)), thickness / Math.tan(radians(angle / 2)))
    return { cut: { as: "scribed", setting: rightAngle - angle / 2 }, reach, short: 0 }
  }
  const bevel = Math.abs(rightAngle - angle)
  if (bevel < nearSquare) return squareEnd()
  const short = thickness * Math.tan(radians(bevel))
  return { cut: { as: "square", setting: bevel }, reach: angle > rightAngle ? short : 0, short }
}

/**
 * A skirting's end at an external corner: mitred at half the turn; its long point stands t tan(turn / 2) beyond the corner.
 * @param angle inside angle of the room, degrees, over 180
 */
export function externalEnd(angle: Degrees, thickness: Mm): CornerEnd {
  const turn = angle - 2 * rightAngle
  const reach = thickness * Math.tan(radians(turn / 2))
  return { cut: { as: "external-mitre", setting: turn / 2 }, reach, short: reach }
}

/** A skirting's end where the wall gives way to an open edge: mitred, and its profile returned to the wall. */
export function returnEnd(thickness: Mm): CornerEnd {
  return { cut: { as: "return", setting: rightAngle / 2 }, reach: 0, short: thickness }
}

/** A square end where nothing is met. */
export function squareEnd(): CornerEnd {
  return { cut: { as: "square", setting: 0 }, reach: 0, short: 0 }
}
