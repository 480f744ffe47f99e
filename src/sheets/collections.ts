import { dateText } from "../kernels/calendar/date-text.ts"
import type { Block, SheetModel } from "../kernels/paper.ts"
import { mmText } from "../kernels/units.ts"
import { type Drop, placeOf } from "../orders/deliveries.ts"
import { massText, packsText } from "./deliveries.ts"
import type { JobResult } from "./job-result.ts"

/** What is fetched, trip by trip: one table for each, to take along in the van. */
export function collectionsSheet(result: JobResult): SheetModel | null {
  const trips = result.deliveries.drops.filter((drop) => drop.collect)
  if (trips.length === 0) return null
  return {
    kind: "collections",
    title: "To collect",
    purpose: "One list a trip: order ahead by the day given, tick each line as it is loaded, note the batch.",
    room: null,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: [
      ...trips.map((trip) => tripTable(trip, result)),
      {
        kind: "text",
        as: "note",
        paragraphs: [
          "Check the van’s load against its plate before the last line is loaded. Lengths tied down and flagged; tins upright; nothing loose behind the driver.",
        ],
      },
    ],
    rests: ["mass-of-paint"],
  }
}

function tripTable(trip: Drop, { deliveries }: JobResult): Block {
  const longest = Math.max(...trip.lines.map((line) => line.longest))
  const long = longest > 0 ? `, longest ${mmText(longest)} mm` : ""
  return {
    kind: "table",
    caption: `${dateText(trip.on)}, at the ${trip.supplier}: ordered ahead by ${dateText(trip.orderBy)}; ${massText(trip)}${long}`,
    columns: [
      { label: "What", width: 34 },
      { label: "Packs", as: "figure", width: 24 },
      { label: "Put in", width: 18 },
      { label: "Batch", as: "write", width: 16 },
      { label: "Loaded", as: "tick", width: 8 },
    ],
    rows: trip.lines.map((line) => ({
      cells: [line.product.name, packsText(line), placeOf(line, deliveries.places) ?? "", "", ""],
    })),
  }
}
