import type { Trade } from "../trade.ts"
import { type PlumbingInputs, plumbingInputs } from "./inputs.ts"
import { plumbingRules } from "./rules.ts"
import { plumbingSheets } from "./sheet.ts"
import { wetPlaces } from "./wet-places.ts"
import { plumbingWork } from "./work.ts"

/** Plumbing: radiators hung after the white behind them, pipes through the floor, sanitaryware on cured tile. */
export const plumbing: Trade<PlumbingInputs> = {
  id: "plumbing",
  title: "Plumbing",
  letter: "W",
  inputs: plumbingInputs,
  uses: [
    { use: "radiator", kind: "each", what: "radiator" },
    { use: "pipe-collar", kind: "each", what: "collar round a pipe at the floor" },
    { use: "wc", kind: "each", what: "WC, pan and cistern" },
    { use: "basin", kind: "each", what: "basin" },
    { use: "shower", kind: "each", what: "shower" },
    { use: "bath", kind: "each", what: "bath" },
    { use: "towel-rail", kind: "each", what: "towel rail" },
    { use: "sink", kind: "each", what: "sink" },
  ],
  rules: plumbingRules,
  facts: wetPlaces,
  work: plumbingWork,
  sheets: plumbingSheets,
}
