import type { Block, SheetModel } from "../kernels/paper.ts"
import type { Room } from "../survey/room.ts"
import { type JobResult, resultsIn } from "./job-result.ts"
import { quantityText } from "./words.ts"

/** What to carry into one room, by trade: net need and what to bring, with a box for what was brought. */
export function quantitiesSheet(result: JobResult, room: Room): SheetModel {
  const blocks = resultsIn(result, room)
    .filter((each) => each.work.quantities.length > 0)
    .map(
      (each): Block => ({
        kind: "table",
        caption: each.title,
        columns: [
          { label: "What", width: 30 },
          { label: "Needed", as: "figure", width: 13 },
          { label: "Bring", as: "figure", width: 13 },
          { label: "How it was worked out", width: 36 },
          { label: "Brought", as: "tick", width: 8 },
        ],
        rows: each.work.quantities.map((quantity) => ({
          cells: [
            quantity.what,
            quantityText(quantity.net, quantity.unit),
            quantityText(quantity.gross, quantity.unit),
            quantity.from,
            "",
          ],
        })),
      }),
    )
  return {
    kind: "quantities",
    title: "What to bring",
    purpose:
      "Net needs of this room. The job is ordered in whole packs, tins and lengths shared by all rooms, so rooms do not add up to the order.",
    room: room.id,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks:
      blocks.length > 0
        ? blocks
        : [{ kind: "text", paragraphs: ["Nothing is to be brought into this room."], as: "lead" }],
    rests: [],
  }
}
