import { distance, type Point } from "../../../kernels/polygon/point.ts"
import type { Region } from "../../../kernels/polygon/region.ts"

/** How rows lie in a room: x along the first row's wall from its left end, y from that wall into the room. */
export interface Frame {
  origin: Point
  /** Unit step along the wall, left to right as one faces it from inside. */
  along: Point
  /** Unit step from the wall into the room. */
  into: Point
}

/**
 * The frame of rows that begin at a wall.
 * @param start,end left and right end of the wall as faced from inside, plan mm; rooms are walked clockwise, so the inside lies to the right
 */
export function frameOf(start: Point, end: Point): Frame {
  const length = distance(start, end)
  const along = { x: (end.x - start.x) / length, y: (end.y - start.y) / length }
  return { origin: start, along, into: { x: along.y, y: -along.x } }
}

/** Plan points as seen in the frame. */
export function toFrame(frame: Frame, points: readonly Point[]): Point[] {
  return points.map(({ x, y }) => {
    const dx = x - frame.origin.x
    const dy = y - frame.origin.y
    return {
      x: dx * frame.along.x + dy * frame.along.y,
      y: dx * frame.into.x + dy * frame.into.y,
    }
  })
}

/** Points of the frame back on the plan. */
export function fromFrame(frame: Frame, points: readonly Point[]): Point[] {
  return points.map(({ x, y }) => ({
    x: frame.origin.x + x * frame.along.x + y * frame.into.x,
    y: frame.origin.y + x * frame.along.y + y * frame.into.y,
  }))
}

/** A plan figure as seen in the frame. */
export function regionToFrame(frame: Frame, region: Region): Region {
  return { outline: toFrame(frame, region.outline), holes: region.holes.map((hole) => toFrame(frame, hole)) }
}

/** A figure of the frame back on the plan. */
export function regionFromFrame(frame: Frame, region: Region): Region {
  return {
    outline: fromFrame(frame, region.outline),
    holes: region.holes.map((hole) => fromFrame(frame, hole)),
  }
}
