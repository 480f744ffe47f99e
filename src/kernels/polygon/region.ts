import type { Point } from "./point.ts"

/** A closed outline: its corners in order, the first not repeated at the end. */
export type Ring = readonly Point[]

/** A plane figure: one outline, and the holes in it (each inside the outline, none overlapping another). */
export interface Region {
  outline: Ring
  holes: readonly Ring[]
}

/** A straight edge of an outline, from one corner to the next. */
export interface Edge {
  from: Point
  to: Point
}

/** An outline as a figure without holes. */
export function regionOf(outline: Ring): Region {
  return { outline, holes: [] }
}

/** The edges of an outline in order; edge i starts at corner i. */
export function edgesOf(ring: Ring): Edge[] {
  return ring.map((from, index) => ({ from, to: ring[(index + 1) % ring.length]! }))
}

/** All edges of a figure: outline first, then each hole. */
export function regionEdges(region: Region): Edge[] {
  return [region.outline, ...region.holes].flatMap(edgesOf)
}
