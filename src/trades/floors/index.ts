import type { Trade } from "../trade.ts"
import { floorsAcross } from "./across.ts"
import { type FloorInputs, floorInputs } from "./inputs.ts"
import { floorFacts } from "./plan-floor.ts"
import { floorRules } from "./rules.ts"
import { floorSheets } from "./sheet.ts"
import { floorWork } from "./work.ts"

/** Floors: floating engineered boards over underlay on a re-fixed deck, or what stays. */
export const floors: Trade<FloorInputs> = {
  id: "floors",
  title: "Floors",
  letter: "F",
  inputs: floorInputs,
  uses: [
    { use: "floor-board", kind: "board", what: "engineered floor board" },
    { use: "floor-underlay", kind: "roll", what: "underlay under it" },
    { use: "floor-tape", kind: "each", what: "tape for underlay joints" },
    { use: "floor-screws", kind: "each", what: "screws for the deck" },
    { use: "floor-glue", kind: "each", what: "glue for tongue and groove" },
    { use: "floor-break-profile", kind: "length", what: "profile over a movement break" },
    { use: "floor-oil", kind: "liquid", what: "floor oil" },
  ],
  rules: floorRules,
  facts: floorFacts,
  work: floorWork,
  sheets: floorSheets,
  across: floorsAcross,
}
