import type { Degrees, Mm } from "../../kernels/units.ts"
import type { EndCut } from "../trade.ts"

/** Off square by less than this, an end is sawn square and the joint closed with the plane, degrees. */
const nearSquare = 0.5
const rightAngle: Degrees = 90

const radians = (degrees: Degrees) => (degrees * Math.PI) / 180

/** One end of a skirting at a corner: how it is cut, and how far its long point lies beyond (or short of) the corner along the wall. */
export interface CornerEnd {
  cut: EndCut
  /** Added to the wall's length at this end for the long point, mm; negative where the board stops short. */
  reach: Mm
}

/**
 * A skirting's end at an internal corner of a room. The board that is fixed first runs into the corner; the second is
 * scribed over its face, so it stops short by the first board's thickness (at the back t / sin a, at the face t / tan(a/2);
 * the longer of the two is sawn and the scribe follows the face).
 * @param angle inside angle of the room, degrees, under 180
 */
export function internalEnd(angle: Degrees, thickness: Mm, fixed: "first" | "second"): CornerEnd {
  if (fixed === "first") {
    const setting = Math.abs(angle - 90) < nearSquare ? 0 : Math.abs(90 - angle)
    return { cut: { as: "square", setting }, reach: 0 }
  }
  const short = Math.min(thickness / Math.sin(radians(angle)), thickness / Math.tan(radians(angle / 2)))
  return { cut: { as: "scribed", setting: 90 - angle / 2 }, reach: -short }
}

/**
 * A skirting's end at an external corner: mitred at half the turn; its long point stands t tan(turn / 2) beyond the corner.
 * @param angle inside angle of the room, degrees, over 180
 */
export function externalEnd(angle: Degrees, thickness: Mm): CornerEnd {
  const turn = angle - 180
  return { cut: { as: "external-mitre", setting: turn / 2 }, reach: thickness * Math.tan(radians(turn / 2)) }
}

/** A skirting's end where the wall gives way to an open edge: mitred, and its profile returned to the wall. */
export function returnEnd(): CornerEnd {
  return { cut: { as: "return", setting: rightAngle / 2 }, reach: 0 }
}
