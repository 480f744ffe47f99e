import { dateText, dayText } from "../kernels/calendar/date-text.ts"
import { type Money, moneyText, sumOf } from "../kernels/money.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import { fixed } from "../kernels/units.ts"
import { paymentPlan } from "../orders/payments.ts"
import type { RuleInForce } from "../rulebook/rules.ts"
import { stages } from "../trades/stages.ts"
import { bySupplier, packsText } from "./deliveries.ts"
import type { JobResult } from "./job-result.ts"
import { lengthSavings } from "./length-savings.ts"
import { moneyTable, roomOfLine, roundingRule, vatRests, vatTable, workOfLine } from "./money-tables.ts"
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
      { label: "What", width: 27 },
      { label: "Need", as: "figure", width: 12 },
      { label: "Order", as: "figure", width: 19 },
      { label: "By", as: "figure", width: 14 },
      { label: "To come", as: "figure", width: 14 },
      { label: "£", as: "figure", width: 12 },
      { label: "Sent", as: "tick", width: 7 },
    ],
    rows: [
      ...own.map(
        (line): Row => ({
          cells: [
            line.product.name,
            quantityText(line.gross, line.unit),
            packsText(line),
            `${dayText(line.orderBy)}${line.late ? ", late" : ""}`,
            dayText(line.comesOn),
            moneyText(line.total, ""),
            "",
          ],
        }),
      ),
      {
        as: "total",
        cells: ["Total", "", "", "", "", moneyText(sumOf(own.map((line) => line.total)), ""), " "],
      },
    ],
  }
}

function price(result: JobResult): SheetModel[] {
  const { price } = result
  if (!price) return []
  const rooms = result.house.rooms.map((room) => room.name)
  const trades = result.trades.map((trade) => trade.title)
  const crewOf = (id: string) => result.programme.crews.find((crew) => crew.id === id)?.name ?? id
  const line = (what: string, amount: Money, waste = "", as?: Row["as"]): Row => ({
    as,
    cells: [what, waste, moneyText(amount, "")],
  })
  const total = (what: string, amount: Money) => line(what, amount, "", "total")
  const wasted = sumOf(price.materials.map((each) => each.waste))
  const some = (lines: readonly unknown[], rows: Row[]) => (lines.length > 0 ? rows : [])
  return [
    {
      ...sheet("price", "Price worked out", roundingRule),
      rests: vatRests(price),
      blocks: [
        {
          kind: "table",
          caption: "Price",
          columns: [
            { label: "What", width: 62 },
            { label: "Of which waste, spares, part packs £", as: "figure", width: 18 },
            { label: "£", as: "figure", width: 20 },
          ],
          rows: [
            ...price.labour.map((each) =>
              line(
                `Labour, ${crewOf(each.crew)}: ${fixed(each.hours, 1)} h at ${moneyText(each.rate, "£")}`,
                each.amount,
              ),
            ),
            total("Labour", price.labourTotal),
            ...price.materials.map((each) =>
              line(`Materials, ${each.what}`, each.amount, moneyText(each.waste, "")),
            ),
            line("Materials", price.materialsTotal, moneyText(wasted, ""), "total"),
            ...some(price.plant, [
              ...price.plant.map((each) => line(`Plant, ${each.what}`, each.amount)),
              total("Plant", price.plantTotal),
            ]),
            line("Overhead and profit", price.overheadAndProfit),
            line("Contingency", price.contingency),
            ...price.provisional.map((each) => line(`Provisional sum, ${each.what}`, each.amount)),
            ...price.sums.map((each) => line(`Agreed change, ${each.what}`, each.amount)),
            total("Before VAT", price.net),
            ...price.taxes.map((tax) =>
              line(`VAT at ${tax.percent} % on ${moneyText(tax.net, "£")}`, tax.vat),
            ),
            total("With VAT", price.gross),
          ],
          note: "Labour is what the output rates of the trades’ rulebook entries give in hours, at each crew’s rate.",
        },
        vatTable(price),
        moneyTable("By room", price, {
          label: "Room",
          keyOf: (each) => roomOfLine(each, result),
          order: rooms,
        }),
        moneyTable("By trade", price, {
          label: "Trade",
          keyOf: (each) => workOfLine(each, result),
          order: trades,
        }),
        moneyTable("By stage of the work", price, {
          label: "Stage",
          keyOf: (each) => each.stage ?? "no stage of its own",
          order: stages,
        }),
        moneyTable("By rate of VAT", price, {
          label: "Rate",
          keyOf: (each) => `${price.taxes[each.rate]!.percent} %`,
        }),
        ...paymentRecord(result),
      ],
    },
  ]
}

/** What is asked for, with room to write what was paid. */
function paymentRecord(result: JobResult): Block[] {
  const agreed = (result.account?.contract ?? result).price
  const plan =
    result.moneyFile && agreed ? paymentPlan(agreed.gross, result.moneyFile, result.programme) : null
  if (!plan) return []
  return [
    {
      kind: "table",
      caption: "Payments of the agreed price",
      columns: [
        { label: "For", width: 31 },
        { label: "Planned", as: "figure", width: 22 },
        { label: "To pay £", as: "figure", width: 15 },
        { label: "Invoice", as: "write", width: 12 },
        { label: "Paid on", as: "write", width: 12 },
        { label: "Paid £", as: "write", width: 12 },
      ],
      rows: [
        ...plan.payments.map(
          (each): Row => ({
            cells: [each.what, dateText(each.reached), moneyText(each.toPay, ""), "", "", ""],
          }),
        ),
        { as: "total", cells: ["Together", "", moneyText(plan.total, ""), " ", " ", " "] },
      ],
      note: "When VAT falls due on a stage payment and on what is held back is for a tax adviser to say.",
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
