import type { Trade } from "../trade.ts"
import { type TilingInputs, tilingInputs } from "./inputs.ts"
import { tilingRules } from "./rules.ts"
import { tilingSheets } from "./sheet.ts"
import { tilingFacts, tilingWork } from "./work.ts"

/** Tiling: walls and floors set out from centre or a whole row, with cure before load and water. */
export const tiling: Trade<TilingInputs> = {
  id: "tiling",
  title: "Tiling",
  letter: "T",
  inputs: tilingInputs,
  uses: [
    { use: "wallTile", kind: "tile", what: "wall tile" },
    { use: "floorTile", kind: "tile", what: "floor tile" },
    { use: "tileAdhesive", kind: "each", what: "tile adhesive, by kg" },
    { use: "grout", kind: "each", what: "grout, by kg" },
    { use: "tileTrim", kind: "each", what: "edge trim, by m" },
    { use: "sealant", kind: "each", what: "sealant, by m of joint" },
  ],
  rules: tilingRules,
  facts: tilingFacts,
  work: tilingWork,
  sheets: tilingSheets,
}
