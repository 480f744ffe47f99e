import type { Mm } from "../../kernels/units.ts"
import { toFrame } from "./layout/frame.ts"
import type { FloorLayout } from "./rows.ts"

/** A row that reaches no further than this beyond the gap lies wholly in a doorway, mm. */
const within: Mm = 1

/**
 * Length of joints that are laid backwards, mm: rows wholly inside a doorway of the first row's wall. Row 1 along the wall is laid first,
 * the doorway's rows after it, back out of the room: their tongue meets no groove, so a loose tongue is glued in.
 * @param gap at the wall, mm
 */
export function looseTongue(layout: FloorLayout, gap: Mm): Mm {
  const runs = layout.rows.flatMap((row) => row.runs)
  const isBehind = (run: (typeof runs)[number]) =>
    run.pieces.every((piece) =>
      piece.shape.every((part) => toFrame(layout.frame, part.outline).every(({ y }) => y <= gap + within)),
    )
  return runs.filter(isBehind).reduce((sum, run) => sum + run.right - run.left, 0)
}
