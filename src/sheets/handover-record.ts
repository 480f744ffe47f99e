import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import type { OrderLine } from "../orders/orders.ts"
import { clientSheet } from "./client-sheet.ts"
import type { JobResult } from "./job-result.ts"
import { isPaste } from "./words.ts"

/** What was used where, with room for batches and spares: handed to the client, a copy kept. */
export function handoverRecord(result: JobResult): SheetModel | null {
  if (result.orders.lines.length === 0) return null
  const blocks = result.trades.flatMap(({ id, title }): Block[] => {
    const own = result.orders.lines.filter((line) => line.trades.includes(id) && lasts(line))
    if (own.length === 0) return []
    return [
      {
        kind: "table",
        caption: title,
        columns: [
          { label: "What was used", width: 29 },
          { label: "Colour", width: 11 },
          { label: "Rooms", width: 22, as: "mark" },
          { label: "Batch", as: "write", width: 14 },
          { label: "Used instead", as: "write", width: 14 },
          { label: "Spares left", as: "write", width: 12 },
        ],
        rows: own.map(
          (line): Row => ({
            cells: [line.product.name, colourOf(line), line.rooms.join(", "), "", "", ""],
          }),
        ),
      },
    ]
  })
  const used = new Set(result.orders.lines.flatMap((line) => line.rooms))
  const rooms = result.house.rooms.filter((room) => used.has(room.id))
  return clientSheet(
    {
      kind: "handover-record",
      title: "Handover record",
      purpose:
        "What was used in which room: batches from the packs, what was used instead, spares left and where.",
    },
    [
      ...blocks,
      {
        kind: "text",
        as: "note",
        paragraphs: [`Rooms: ${rooms.map((room) => `${room.id} ${room.name}`).join(", ")}.`],
      },
      {
        kind: "boxes",
        caption: "Where things are",
        labels: ["Spares kept at", "Keys handed over", "Leaflets handed over"],
      },
      { kind: "sign", roles: ["Builder", "Client"] },
    ],
  )
}

/** True for what stays in sight and may be wanted again: not screws, tape or glue. */
function lasts({ product }: OrderLine): boolean {
  if (product.kind === "roll") return false
  if (product.kind !== "each") return true
  return product.holdsUnit === "nr" && product.holds === 1 && !isPaste(product)
}

function colourOf({ product }: OrderLine): string {
  if (product.kind === "liquid") return product.colour
  return product.kind === "leaf" ? product.face : "–"
}
