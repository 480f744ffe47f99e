import type { Row, SheetModel } from "../kernels/paper.ts"
import { fixed, metres } from "../kernels/units.ts"
import type { Room } from "../survey/room.ts"
import type { JobResult } from "./job-result.ts"

/** Blank lines of a snag sheet: with how to look and who looked, one page. */
const lines = 13

/** The snag sheet of a room: blank lines by wall, who, by when, and a box when it was looked at again; how to look. */
export function snagSheet({ rules, trades, results }: JobResult, room: Room): SheetModel {
  const far = fixed(metres(rules.value("snag-view")), 0)
  const near = fixed(metres(rules.value("snag-view-ware")), 1)
  const here = trades.filter((trade) =>
    results.some((each) => each.trade === trade.id && each.room?.id === room.id),
  )
  return {
    kind: "snags",
    title: "Snags",
    purpose: "Write one fault a line; tick when it was looked at again and is right.",
    room: room.id,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: [
      {
        kind: "list",
        caption: "How to look",
        items: [
          `Paint, varnish, walls and ceilings: by daylight, standing ${far} m away, facing it; wall lights off, no lamp held along the surface.`,
          `Sanitaryware, tile and glass close by: from ${near} m, by daylight. Doors, drawers and taps: by using them.`,
          `Write the wall by its number on the room at a glance, F for floor, C for ceiling, or the door’s number. Trades here: ${here.map(({ title }) => title.toLowerCase()).join(", ")}.`,
          "Timber moves and colours as it dries and ages: a hair crack at a joint is written down, and mended after the first heating season.",
        ],
      },
      {
        kind: "table",
        caption: "What is to be put right",
        columns: [
          { label: "No.", as: "figure", width: 7 },
          { label: "Wall", as: "write", width: 12 },
          { label: "What is wrong, where", as: "write", width: 66 },
          { label: "Trade", as: "write", width: 22 },
          { label: "By when", as: "write", width: 20 },
          { label: "Re-checked", as: "tick", width: 14 },
        ],
        rows: Array.from(
          { length: lines },
          (_, index): Row => ({ cells: [String(index + 1), "", "", "", "", ""] }),
        ),
      },
      { kind: "sign", roles: ["Looked at by", "All re-checked"] },
    ],
    rests: ["snag-view", "snag-view-ware"],
  }
}
