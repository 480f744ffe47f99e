import type { RoomFacts, Task, Trade } from "../trade.ts"
import { joineryAcross } from "./across.ts"
import { type JoineryInputs, joineryInputs } from "./inputs.ts"
import { joineryRules } from "./rules.ts"
import { joinerySheets } from "./sheet.ts"
import { joineryWork } from "./work.ts"

/** Second-fix joinery: skirting, architraves, trims, nosings, thresholds, stair parts. */
export const joinery: Trade<JoineryInputs> = {
  id: "joinery",
  title: "Joinery",
  letter: "S",
  inputs: joineryInputs,
  uses: [
    { use: "skirting", kind: "length", what: "skirting" },
    { use: "architrave", kind: "length", what: "architrave" },
    { use: "plinth", kind: "length", what: "plinth blocks, sawn from a length" },
    { use: "nosing", kind: "length", what: "stair nosing" },
    { use: "threshold", kind: "length", what: "threshold bar" },
    { use: "grab-adhesive", kind: "each", what: "grab adhesive" },
  ],
  rules: joineryRules,
  facts: joineryFacts,
  work: joineryWork,
  sheets: joinerySheets,
  across: joineryAcross,
}

/** What other trades need: the skirting that covers the floor's gap, the architraves to be painted. */
function joineryFacts({ job, input }: Task<JoineryInputs>): RoomFacts {
  const skirting =
    input.skirting === false ? undefined : job.product(input.skirting ?? job.chosen("skirting"), "length")
  const architrave =
    input.architrave === false
      ? undefined
      : job.product(input.architrave ?? job.chosen("architrave"), "length")
  return {
    ...(skirting && { skirting: { thickness: skirting.thickness, height: skirting.width } }),
    ...(architrave && {
      architrave: {
        thickness: architrave.thickness,
        width: architrave.width,
        margin: job.rules.value("joinery-architrave-margin"),
      },
    }),
  }
}
