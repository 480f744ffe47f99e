import type { Checked } from "./programme.ts"
import { orderBroken } from "./verify/order.ts"
import { spaceBroken } from "./verify/space.ts"
import { timeBroken } from "./verify/time.ts"
import { visitsBroken } from "./verify/visits.ts"

/**
 * Everything a dated programme breaks, one line each, found without any of the code that dates: each step once; working
 * hours, breaks, free days and quiet hours; people of a crew; gates; the order of stages and the rules of the house; rooms,
 * dust, wet floors on the way, doorways by evening, the way to bed at night; visits; the bound.
 * A programme that was given up for an error (no steps) is not looked at. Steps with an actual day are taken as they are.
 * @returns nothing if it stands
 */
export function verifyProgramme(checked: Checked): string[] {
  return [...timeBroken(checked), ...orderBroken(checked), ...spaceBroken(checked), ...visitsBroken(checked)]
}
