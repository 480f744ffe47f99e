import type { Trade } from "../trade.ts"
import { electricsAcross } from "./across.ts"
import { type ElectricsInputs, electricsInputs, pointKind } from "./inputs.ts"
import { pointWords } from "./points.ts"
import { electricsRules } from "./rules.ts"
import { electricsSheets } from "./sheet.ts"
import { electricsWork } from "./work.ts"

/** Electrics: points marked and counted by wall, the electrician's visits; the licensed work stays with the electrician. */
export const electrics: Trade<ElectricsInputs> = {
  id: "electrics",
  title: "Electrics",
  letter: "E",
  inputs: electricsInputs,
  uses: pointKind.options.map((use) => ({ use, kind: "each", what: pointWords[use] })),
  rules: electricsRules,
  work: electricsWork,
  sheets: electricsSheets,
  across: electricsAcross,
}
