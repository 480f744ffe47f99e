import { dateText, dayText } from "../kernels/calendar/date-text.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import { fixed, mmText } from "../kernels/units.ts"
import { type Drop, placeOf, type Surplus } from "../orders/deliveries.ts"
import type { OrderLine } from "../orders/orders.ts"
import type { JobResult } from "./job-result.ts"
import { quantityText } from "./words.ts"

/** What comes to site, drop by drop: packs to count, where to put them, what to check, what to mind on the stair; what may go back. */
export function deliveriesSheet(result: JobResult): SheetModel | null {
  const { drops, surplus, places } = result.deliveries
  if (drops.length === 0) return null
  return {
    kind: "deliveries",
    title: "Deliveries",
    purpose:
      "Check each line as it comes, before you sign: count, batch, damage; put it where it says. What fails goes back with the driver.",
    room: null,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: null,
    blocks: [
      ...stair(result),
      ...drops.filter((drop) => !drop.collect).map((drop) => dropTable(drop, result)),
      ...(places.length > 0
        ? [
            {
              kind: "list" as const,
              caption: "Where to put it",
              items: places.map(
                (each) =>
                  `${each.place}: ${each.takes.map((kind) => kindWords[kind]).join(", ")}${each.note ? `. ${each.note}` : ""}`,
              ),
            },
          ]
        : []),
      {
        kind: "list",
        caption: "Checking",
        items: [
          "Batch: all packs and tins of a colour alike; write the number. Two batches: mix them before they are seen side by side, or send one back.",
          "Moisture: press the meter into an inner pack or the end of a length; write the reading. The floor and joinery sheets say what is dry enough.",
          "Label: a fire-resisting leaf shows the maker’s label on its top edge. Without it, it is not one: send it back.",
          "Boards and leaves lie flat on bearers, packed, off a new floor and away from radiators; paint and adhesive where it does not freeze.",
        ],
      },
      ...returns(surplus),
      { kind: "sign", roles: ["Foreman"] },
    ],
    rests: ["lift-one-person", "delivery-early-most", "mass-of-paint"],
  }
}

const kindWords: Readonly<Record<OrderLine["product"]["kind"], string>> = {
  board: "boards",
  roll: "rolls",
  length: "lengths",
  leaf: "door leaves",
  liquid: "paint and oil",
  each: "boxes and pieces",
  tile: "tiles",
}

/** What goes up the stair, and what does not go up as it comes. */
function stair({ job, orders }: JobResult): Block[] {
  const minded = orders.lines.filter((line) => line.carry !== null)
  const most = `Longest thing that goes up the stair ${mmText(job.carry.longest)} mm; heaviest for one person ${job.carry.heaviest} kg.`
  if (minded.length === 0) return [{ kind: "text", as: "note", paragraphs: [most] }]
  return [
    {
      kind: "warning",
      caption: `On the stair. ${most}`,
      items: minded.map((line) => `${line.product.name}: ${line.carry}`),
    },
  ]
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

/** Mass of a drop or a trip in words. */
export function massText({ mass, unweighed }: Pick<Drop, "mass" | "unweighed">): string {
  const known = mass > 0 ? `about ${fixed(mass, 0)} kg` : ""
  const rest = unweighed > 0 ? `${unweighed} ${unweighed === 1 ? "line" : "lines"} not weighed` : ""
  return [known, rest].filter(Boolean).join(", ")
}

/** What is checked of a line besides count, batch and damage, with a place to write. */
function readText({ product }: OrderLine): string {
  if (product.kind === "board" || (product.kind === "length" && product.material !== "metal"))
    return "moisture ___ %"
  if (product.kind === "leaf" && product.fire !== "none") return `label ${product.fire} minutes seen ___`
  return ""
}

function dropTable(drop: Drop, { deliveries }: JobResult): Block {
  const late = drop.lines.some((line) => line.late)
  return {
    kind: "table",
    caption: `${dateText(drop.on)}, from the ${drop.supplier}: order by ${dateText(drop.orderBy)}${late ? ", late: ring today" : ""}; ${massText(drop)}`,
    columns: [
      { label: "What", width: 30 },
      { label: "Packs", as: "figure", width: 21 },
      { label: "Put in", width: 15 },
      { label: "All here", as: "tick", width: 7 },
      { label: "Batch", as: "write", width: 11 },
      { label: "Read", width: 18 },
    ],
    rows: drop.lines.map(
      (line): Row => ({
        cells: [
          `${line.product.name}${whenText(line)}`,
          packsText(line) + holdsText(line),
          line.straightIn
            ? `straight into ${line.rooms.join(", ")}`
            : (placeOf(line, deliveries.places) ?? ""),
          "",
          "",
          readText(line),
        ],
      }),
    ),
  }
}

/** What the packs hold together, where that is not plain from their number. */
function holdsText(line: OrderLine): string {
  const count = line.packs.reduce((sum, pack) => sum + pack.count, 0)
  return line.unit === "nr" && line.bought === count ? "" : ` (${quantityText(line.bought, line.unit)})`
}

/** When it is needed and why it must not come sooner. */
function whenText(line: OrderLine): string {
  const needed = `needed ${dayText(line.neededOn)}`
  return line.notBefore === null
    ? ` (${needed})`
    : ` (${needed}; not before ${dayText(line.earliest)}: ${line.notBefore})`
}

function returns(surplus: readonly Surplus[]): Block[] {
  const over = surplus.filter(({ line, over: left }) => left > 0 && line.bought > 0)
  if (over.length === 0) return []
  return [
    {
      kind: "table",
      caption: "At the end: count what is over; whole unopened packs go back while the supplier takes them",
      columns: [
        { label: "What", width: 30 },
        { label: "Over if nothing was spoilt", as: "figure", width: 17 },
        { label: "Whole packs", as: "figure", width: 11 },
        { label: "Counted", as: "write", width: 14 },
        { label: "Goes back", as: "write", width: 14 },
        { label: "Left with client", as: "write", width: 14 },
      ],
      rows: over.map(({ line, over: left, wholePacks }) => ({
        cells: [line.product.name, quantityText(left, line.unit), String(wholePacks), "", "", ""],
      })),
    },
  ]
}
