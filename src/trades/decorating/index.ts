import type { Trade } from "../trade.ts"
import { type DecoratingInputs, decoratingInputs } from "./inputs.ts"
import { paintOrder } from "./paint-order.ts"
import { decoratingRules } from "./rules.ts"
import { decoratingSheets } from "./sheet.ts"
import { decoratingWork } from "./work.ts"

/** Decorating: plaster and wood coated in order, by surface, with drying times; tins over the whole job. */
export const decorating: Trade<DecoratingInputs> = {
  id: "decorating",
  title: "Decorating",
  letter: "P",
  inputs: decoratingInputs,
  uses: [
    { use: "mist", kind: "liquid", what: "paint for the mist coat" },
    { use: "white", kind: "liquid", what: "white emulsion for plaster" },
    { use: "ceilingWhite", kind: "liquid", what: "white emulsion for ceilings" },
    { use: "wallColour", kind: "liquid", what: "emulsion of the wall colour" },
    { use: "moistureColour", kind: "liquid", what: "wall paint for wet rooms" },
    { use: "moistureWhite", kind: "liquid", what: "ceiling paint for wet rooms" },
    { use: "bond", kind: "liquid", what: "bond coat over old gloss" },
    { use: "stainBlock", kind: "liquid", what: "stain-blocking coat" },
    { use: "primer", kind: "liquid", what: "primer for bare wood" },
    { use: "undercoat", kind: "liquid", what: "undercoat for wood" },
    { use: "trim", kind: "liquid", what: "finish for wood" },
    { use: "doorFinish", kind: "liquid", what: "clear finish for doors" },
  ],
  rules: decoratingRules,
  work: decoratingWork,
  sheets: decoratingSheets,
  across: async (job, rooms) => paintOrder(job, rooms),
}
