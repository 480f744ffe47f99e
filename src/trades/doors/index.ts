import type { Trade } from "../trade.ts"
import { doorsAcross } from "./across.ts"
import { type DoorsInputs, doorInputs, doorsInputs } from "./inputs.ts"
import { liningFacts } from "./lining-facts.ts"
import { rules } from "./rules.ts"
import { doorSheets } from "./sheets/door-sheet.ts"
import { doorsWork } from "./work.ts"

/** Doors: which leaf where, and hung from one sheet. */
export const doors: Trade<DoorsInputs> = {
  id: "doors",
  title: "Doors",
  letter: "D",
  inputs: doorsInputs,
  doorInputs,
  uses: [
    { use: "leaf", kind: "leaf", what: "ordinary door leaf" },
    { use: "fire-leaf", kind: "leaf", what: "fire-resisting door leaf" },
    { use: "lining", kind: "length", what: "door lining" },
    { use: "stop", kind: "length", what: "planted door stop" },
    { use: "hinge", kind: "each", what: "hinges" },
    { use: "fire-hinge", kind: "each", what: "hinges of fire-resisting leaves" },
    { use: "hinge-screw", kind: "each", what: "hinge screws" },
    { use: "latch", kind: "each", what: "latch with keep" },
    { use: "lock", kind: "each", what: "lock with keep" },
    { use: "handle", kind: "each", what: "pair of handles" },
    { use: "thumb-turn", kind: "each", what: "thumb-turn bolt" },
    { use: "closer", kind: "each", what: "door closer" },
    { use: "fire-seal", kind: "each", what: "intumescent strip" },
    { use: "threshold-seal", kind: "each", what: "seal at the foot of a leaf" },
  ],
  rules,
  facts: liningFacts,
  work: doorsWork,
  sheets: doorSheets,
  across: doorsAcross,
}
