import type { DoorEntry } from "../../../intake/schema/house.ts"
import type { Kilograms, Mm } from "../../../kernels/units.ts"
import type { DoorInputs } from "../inputs.ts"
import type { RulesRead } from "../rules-read.ts"

/** The closer of one leaf. */
export interface CloserFit {
  /** Face of the leaf it is screwed to: `pull` is the one the knuckles show on. */
  face: "pull" | "push"
  /** Room or place on that side, by its id. */
  side: string
  /** Least power size by width and mass of the leaf; null where none carries it. */
  size: number | null
}

const sizes = [1, 2, 3, 4, 5, 6, 7] as const
const notForClosers = ["outside", "garage", "cupboard"]

/**
 * Face and power size of a closer: on the pull side, except where that side is the open air, a garage or a cupboard (common
 * practice; the maker's template decides). The size is the least whose width and mass both reach the leaf's (BS EN 1154, as
 * reproduced by a hardware guide), for a fire door never under the one asked for those.
 */
export function closerFit(
  door: Pick<DoorEntry, "between" | "swingsInto">,
  leaf: { width: Mm; mass: Kilograms | null; fire: boolean },
  work: Pick<DoorInputs, "closerFace">,
  rules: RulesRead,
): CloserFit {
  const pull = door.swingsInto ?? door.between[1]
  const push = door.between.find((id) => id !== pull) ?? pull
  const face = work.closerFace ?? (notForClosers.includes(pull) ? "push" : "pull")
  return { face, side: face === "pull" ? pull : push, size: powerSize(leaf, rules) }
}

function powerSize(
  { width, mass, fire }: { width: Mm; mass: Kilograms | null; fire: boolean },
  rules: RulesRead,
): number | null {
  const least = fire ? rules.value("door-closer-fire-size") : 1
  const found = sizes.find(
    (size) =>
      size >= least &&
      width <= rules.value(`door-closer-${size}-width`) &&
      (mass ?? 0) <= rules.value(`door-closer-${size}-mass`),
  )
  return found ?? null
}
