import type { Mm } from "../../../kernels/units.ts"

/** Fixings of a lining leg. */
export interface Fixings {
  /** From the underside of the head down, whole mm, from the top. */
  places: Mm[]
  /** Shortest screw: lining, widest packing and the hold in the wall, mm. */
  screw: Mm
}

/** Fixings of a lining leg: the first a set distance from each end, the others evenly between, none further apart than allowed. */
export function liningFixings(
  leg: { height: Mm; thickness: Mm; packing: Mm },
  allowed: { end: Mm; centres: Mm; hold: Mm },
): Fixings {
  const { end, centres, hold } = allowed
  const run = Math.max(0, leg.height - 2 * end)
  const spaces = Math.max(1, Math.ceil(run / centres))
  const places = Array.from({ length: spaces + 1 }, (_, n) => Math.round(end + (run * n) / spaces))
  return { places, screw: Math.ceil(leg.thickness + leg.packing + hold) }
}
