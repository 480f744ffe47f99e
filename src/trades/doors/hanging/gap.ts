import type { Mm } from "../../../kernels/units.ts"
import type { DoorInputs } from "../inputs.ts"
import type { RulesRead } from "../rules-read.ts"

/** Pass limits of a gap and what is aimed at, mm. */
export interface GapRange {
  least: Mm
  target: Mm
  most: Mm
}

/** Gap at head and jambs: the leaf's own certificate where it says, else the rulebook's for fire or ordinary leaves. */
export function sideGap(fire: boolean, own: DoorInputs["certificate"], rules: RulesRead): GapRange {
  const least = own?.gapLeast ?? rules.value(fire ? "door-fire-gap-least" : "door-gap-least")
  const most = own?.gapMost ?? rules.value(fire ? "door-fire-gap-most" : "door-gap-most")
  const target = rules.value(fire ? "door-fire-gap-target" : "door-gap-target")
  return { least, most, target: Math.min(most, Math.max(least, target)) }
}
