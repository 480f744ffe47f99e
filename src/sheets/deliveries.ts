import { dateText } from "../kernels/calendar/date-text.ts"
import type { Block, SheetModel } from "../kernels/paper.ts"
import { mmText } from "../kernels/units.ts"
import type { OrderLine } from "../orders/orders.ts"
import type { JobResult } from "./job-result.ts"
import { quantityText } from "./words.ts"

/** What comes to site, supplier by supplier: packs to count, the last day to order, what to mind on the stair. No prices. */
export function deliveriesSheet(result: JobResult): SheetModel | null {
  if (result.orders.lines.length === 0) return null
  return {
    kind: "deliveries",
    title: "Deliveries",
    purpose: "Count each line when it comes; write the batch; look for damage before signing.",
    room: null,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: [
      {
        kind: "text",
        as: "note",
        paragraphs: [
          `Longest thing that goes up the stair ${mmText(result.job.carry.longest)} mm; heaviest for one person ${result.job.carry.heaviest} kg.`,
        ],
      },
      ...bySupplier(result.orders.lines).map(supplierBlock),
    ],
    rests: ["lift-one-person"],
  }
}

/** Order lines grouped by supplier, in order of name. */
export function bySupplier(lines: readonly OrderLine[]): { supplier: string; lines: OrderLine[] }[] {
  return [...new Set(lines.map((line) => line.product.supplier))].map((supplier) => ({
    supplier,
    lines: lines.filter((line) => line.product.supplier === supplier),
  }))
}

/** The packs of a line in words: `2 × 5 l tin + 1 × 2.5 l tin`. */
export function packsText(line: OrderLine): string {
  return line.packs.map((pack) => `${pack.count} × ${pack.size}`).join(" + ")
}

function supplierBlock({ supplier, lines }: { supplier: string; lines: OrderLine[] }): Block {
  return {
    kind: "table",
    caption: `From the ${supplier}`,
    columns: [
      { label: "What", width: 27 },
      { label: "Packs", as: "figure", width: 19 },
      { label: "Holds", as: "figure", width: 11 },
      { label: "Order by", as: "figure", width: 13 },
      { label: "On site", as: "figure", width: 13 },
      { label: "Batch", as: "write", width: 11 },
      { label: "Came", as: "tick", width: 7 },
    ],
    rows: lines.map((line) => ({
      cells: [
        `${line.product.name}${line.carry ? ` (${line.carry})` : ""}`,
        packsText(line),
        quantityText(line.bought, line.unit),
        `${dateText(line.orderBy)}${line.late ? ", late" : ""}`,
        dateText(line.neededOn),
        "",
        "",
      ],
    })),
  }
}
