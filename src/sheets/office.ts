import { dateText } from "../kernels/calendar/date-text.ts"
import { moneyText } from "../kernels/money.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import { fixed } from "../kernels/units.ts"
import type { RuleInForce } from "../rulebook/rules.ts"
import { bySupplier, packsText } from "./deliveries.ts"
import type { JobResult } from "./job-result.ts"
import { lengthSavings } from "./length-savings.ts"
import { quantityText } from "./words.ts"

/** The office's sheets: orders with prices, the price worked out, the survey's trust, every rulebook entry used. Never published. */
export function officeSheets(result: JobResult, used: readonly string[]): SheetModel[] {
  return [...orders(result), ...price(result), workings(result), rulebook(result, used)]
}

function sheet(kind: string, title: string, purpose: string): Omit<SheetModel, "blocks"> {
  return {
    kind,
    title,
    purpose,
    room: null,
    trade: null,
    audience: ["office"],
    hosted: false,
    orientation: "portrait",
    datum: null,
    rests: [],
  }
}

function orders(result: JobResult): SheetModel[] {
  const { lines } = result.orders
  if (lines.length === 0) return []
  return [
    {
      ...sheet("orders", "Orders", "Order from each supplier by the day given; prices before tax."),
      blocks: [...bySupplier(lines).map(supplierBlock), ...lengthSavings(result)],
    },
  ]
}

function supplierBlock({ supplier, lines: own }: ReturnType<typeof bySupplier>[number]): Block {
  return {
    kind: "table",
    caption: `To the ${supplier}`,
    columns: [
      { label: "What", width: 28 },
      { label: "Need", as: "figure", width: 13 },
      { label: "Order", as: "figure", width: 20 },
      { label: "By", as: "figure", width: 16 },
      { label: "£", as: "figure", width: 13 },
      { label: "Sent", as: "tick", width: 8 },
    ],
    rows: [
      ...own.map(
        (line): Row => ({
          cells: [
            line.product.name,
            quantityText(line.gross, line.unit),
            packsText(line),
            `${dateText(line.orderBy)}${line.late ? ", late" : ""}`,
            moneyText(line.total, ""),
            "",
          ],
        }),
      ),
      {
        as: "total",
        cells: [
          "Total",
          "",
          "",
          "",
          moneyText(
            own.reduce((sum, line) => sum.plus(line.total), own[0]!.total.minus(own[0]!.total)),
            "",
          ),
          " ",
        ],
      },
    ],
  }
}

function price(result: JobResult): SheetModel[] {
  const { price } = result
  if (!price) return []
  const line = (what: string, amount: (typeof price)["net"], as?: Row["as"]): Row => ({
    as,
    cells: [what, moneyText(amount, "")],
  })
  return [
    {
      ...sheet(
        "price",
        "Price worked out",
        "Every line is rounded half up to the penny once; every total is the sum of its lines.",
      ),
      blocks: [
        {
          kind: "table",
          caption: "Price",
          columns: [
            { label: "What", width: 70 },
            { label: "£", as: "figure", width: 30 },
          ],
          rows: [
            ...price.labour.map((each) =>
              line(
                `Labour, ${result.programme.crews.find((crew) => crew.id === each.crew)?.name ?? each.crew}: ${fixed(each.hours, 1)} h at ${moneyText(each.rate, "£")}`,
                each.amount,
              ),
            ),
            line("Labour", price.labourTotal, "total"),
            line("Materials, as on the order sheets", price.materialsTotal, "total"),
            line("Overhead and profit", price.overheadAndProfit),
            line("Contingency", price.contingency),
            ...price.provisional.map((each) => line(`Provisional: ${each.what}`, each.amount)),
            line("Before tax", price.net, "total"),
            line(`VAT at ${price.vatPercent} %: ${price.vatBecause}`, price.vat),
            line("With tax", price.gross, "total"),
          ],
        },
      ],
    },
  ]
}

function workings(result: JobResult): SheetModel {
  return {
    ...sheet(
      "workings",
      "Survey and findings",
      "On which measurements the pack rests, and what was open when it was made.",
    ),
    blocks: [
      {
        kind: "table",
        caption: "Rooms as measured",
        columns: [
          { label: "Room", width: 8, as: "mark" },
          { label: "Name", width: 24 },
          { label: "Taped on", width: 16, as: "figure" },
          { label: "Floor m²", width: 11, as: "figure" },
          { label: "Closure mm", width: 12, as: "figure" },
          { label: "Worst residual mm", width: 12, as: "figure" },
          { label: "Shape", width: 17 },
        ],
        rows: result.house.rooms.map((room) => ({
          cells: [
            room.id,
            room.name,
            dateText(room.measured.on),
            fixed(room.floorArea, 3),
            fixed(room.trust.closure, 1),
            fixed(room.trust.worstResidual, 1),
            room.trust.fixed ? "fixed" : "not fixed: one more diagonal",
          ],
        })),
      },
      {
        kind: "list",
        caption: "Findings when this pack was made",
        items:
          result.findings.length > 0 ? [...new Set(result.findings.map((each) => each.message))] : ["none"],
      },
    ],
  }
}

function rulebook(result: JobResult, used: readonly string[]): SheetModel {
  const entries = used.map((id) => result.rules.entry(id)).sort((a, b) => (a.id < b.id ? -1 : 1))
  return {
    ...sheet(
      "rulebook",
      "Rulebook entries used",
      "Every constant that this pack rests on, with what it rests on itself.",
    ),
    blocks: [
      {
        kind: "table",
        caption: "Entries",
        columns: [
          { label: "Id", width: 24 },
          { label: "What", width: 34 },
          { label: "Value", width: 14, as: "figure" },
          { label: "Status and source", width: 28 },
        ],
        rows: entries.map((entry) => ({
          cells: [entry.id, entry.what, valueText(entry), sourceText(entry)],
        })),
      },
    ],
  }
}

function valueText(entry: RuleInForce): string {
  return `${entry.value} ${entry.unit}`
}

function sourceText(entry: RuleInForce): string {
  const own =
    entry.reason === undefined
      ? ""
      : ` Overridden for this job (the rulebook has ${entry.standard} ${entry.unit}): ${entry.reason}.`
  return `${entry.status}${entry.source ? `: ${entry.source}` : ""}.${own}`
}
