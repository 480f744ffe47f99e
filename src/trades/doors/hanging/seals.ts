import type { Mm } from "../../../kernels/units.ts"

/** Intumescent strip of one leaf, cut to length in the order it is put in. */
export interface SealCut {
  where: "head" | "lock jamb" | "hinge jamb"
  lengths: Mm[]
}

/**
 * Strips to head and both jambs, none at the foot; on the hinge jamb broken at each hinge.
 * @param opening clear between the lining's legs, and from floor to head at each jamb, mm; the gap over the leaf at the hinge jamb
 * @param hinges  tops from the top of the leaf, and their length, mm
 * @returns lengths in mm; a piece of no length is left out
 */
export function sealCuts(
  opening: { width: Mm; lockJamb: Mm; hingeJamb: Mm; headGap: Mm },
  hinges: { tops: readonly Mm[]; length: Mm },
): SealCut[] {
  const pieces: Mm[] = []
  let from = 0
  for (const top of hinges.tops) {
    const at = top + opening.headGap
    if (at > from) pieces.push(at - from)
    from = at + hinges.length
  }
  if (opening.hingeJamb > from) pieces.push(opening.hingeJamb - from)
  return [
    { where: "head", lengths: [opening.width] },
    { where: "lock jamb", lengths: [opening.lockJamb] },
    { where: "hinge jamb", lengths: pieces },
  ]
}

/** Strip of one leaf in all, mm. */
export function sealLength(cuts: readonly SealCut[]): Mm {
  return cuts.reduce((sum, cut) => sum + cut.lengths.reduce((part, each) => part + each, 0), 0)
}
