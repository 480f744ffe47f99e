import { dateText, dayText } from "../kernels/calendar/date-text.ts"
import { moneyText } from "../kernels/money.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import { orderChanges, priceChange } from "../orders/change.ts"
import type { OrderLine } from "../orders/orders.ts"
import { runningAccount, standing } from "./client-variations.ts"
import { packsText } from "./deliveries.ts"
import type { Change, JobResult } from "./job-result.ts"

/** A sheet that stands the same before and after, by its number. */
type Working = (result: JobResult) => readonly { number: string; title: string; blocks: unknown }[]

/**
 * The office's sheet of variations: the running account with each cost that changes, orders that change, and the sheets that must be
 * printed again.
 * @param workingSheets the sheets of the trades and rooms of a result, numbered
 */
export function variationsSheet(result: JobResult, workingSheets: Working): SheetModel[] {
  const { account } = result
  if (!account) return []
  return [
    {
      kind: "variations",
      title: "Variations",
      purpose:
        "What each change does to price, finish, orders and paper. Only accepted changes are part of the job.",
      room: null,
      trade: null,
      audience: ["office"],
      hosted: false,
      orientation: "portrait",
      datum: null,
      blocks: [
        ...(result.price ? [runningAccount(account, result)] : []),
        ...account.changes.flatMap((change) => changeBlocks(change, result, workingSheets)),
      ],
      rests: [],
    },
  ]
}

function changeBlocks(change: Change, result: JobResult, workingSheets: Working): Block[] {
  const { variation, before, after } = change
  const heading: Block = {
    kind: "heading",
    text: `${variation.id} ${variation.what} (${variation.asked}, ${dateText(variation.on)}; ${standing(change)})`,
  }
  if (!after) return [heading]
  return [
    heading,
    ...costs(change, result),
    finish(before, after),
    ...orders(before, after),
    reprint(workingSheets(before), workingSheets(after)),
  ]
}

function costs({ before, after }: Change, { house, trades }: JobResult): Block[] {
  if (!before.price || !after?.price) return []
  const change = priceChange(before.price, after.price)
  const where = (trade: string | null, room: string | null) =>
    [
      trades.find((each) => each.id === trade)?.title.toLowerCase(),
      house.rooms.find((each) => each.id === room)?.name,
    ]
      .filter(Boolean)
      .join(", ")
  const line = (what: string, amount: typeof change.net, as?: Row["as"]): Row => ({
    as,
    cells: [what, moneyText(amount, "")],
  })
  return [
    {
      kind: "table",
      caption: "Costs that change",
      columns: [
        { label: "What", width: 78 },
        { label: "£", as: "figure", width: 22 },
      ],
      rows: [
        ...change.costs.map((each) => {
          const place = where(each.trade, each.room)
          return line(
            `${each.cost.isNegative() ? "Omit" : "Add"}: ${each.what}${place ? ` (${place})` : ""}`,
            each.cost,
          )
        }),
        line("Overhead, profit and contingency on these", change.overhead),
        line("Before VAT", change.net, "total"),
        line("VAT", change.vat),
        line("The price changes by", change.gross, "total"),
      ],
    },
  ]
}

function finish(before: JobResult, after: JobResult): Block {
  const was = before.programme.finish
  const now = after.programme.finish
  const text =
    was === now
      ? `Finish: stays ${dateText(now)}.`
      : `Finish: ${dateText(was)} becomes ${dateText(now)}. The programme is worked out anew, so rooms may change their turn.`
  return { kind: "text", paragraphs: [text] }
}

function orders(before: JobResult, after: JobResult): Block[] {
  const changed = orderChanges(before.orders.lines, after.orders.lines)
  if (changed.length === 0) return [{ kind: "text", paragraphs: ["Orders: none changes."] }]
  const packs = (line: OrderLine | null) => (line ? packsText(line) : "none")
  const by = (line: OrderLine | null) => (line ? dayText(line.orderBy) : "–")
  const amounts = changed.filter((each) => packs(each.before) !== packs(each.after))
  const days = changed.filter((each) => !amounts.includes(each))
  return [
    ...(amounts.length > 0
      ? [
          {
            kind: "table" as const,
            caption: "Orders that change",
            columns: [
              { label: "What", width: 30 },
              { label: "Was", as: "figure" as const, width: 22 },
              { label: "Now", as: "figure" as const, width: 22 },
              { label: "Order by, was", as: "figure" as const, width: 13 },
              { label: "Now", as: "figure" as const, width: 13 },
            ],
            rows: amounts.map((each) => ({
              cells: [
                each.line.product.name,
                packs(each.before),
                packs(each.after),
                by(each.before),
                by(each.after),
              ],
            })),
          },
        ]
      : []),
    ...(days.length > 0
      ? [
          {
            kind: "text" as const,
            paragraphs: [
              `The same packs, but another last day to order: ${days
                .map((each) => `${each.line.product.name}, ${by(each.after)} (was ${by(each.before)})`)
                .join("; ")}.`,
            ],
          },
        ]
      : []),
  ]
}

/** Sheets of trades and rooms that say something else now, that are new, or that fall away. */
function reprint(before: ReturnType<Working>, after: ReturnType<Working>): Block {
  const textOf = (sheet: { blocks: unknown }) => JSON.stringify(sheet.blocks)
  const was = new Map(before.map((sheet) => [sheet.number, sheet]))
  const now = new Map(after.map((sheet) => [sheet.number, sheet]))
  const changed = after.filter((sheet) => {
    const old = was.get(sheet.number)
    return old && textOf(old) !== textOf(sheet)
  })
  const added = after.filter((sheet) => !was.has(sheet.number))
  const gone = before.filter((sheet) => !now.has(sheet.number))
  const list = (sheets: ReturnType<Working>) => sheets.map((sheet) => sheet.number).join(", ")
  return {
    kind: "list",
    caption: "Paper",
    items: [
      changed.length > 0
        ? `Print again and take the old ones away (${changed.length}): ${list(changed)}`
        : "No sheet changes.",
      ...(added.length > 0 ? [`New: ${list(added)}`] : []),
      ...(gone.length > 0 ? [`Withdraw: ${list(gone)}`] : []),
    ],
  }
}
