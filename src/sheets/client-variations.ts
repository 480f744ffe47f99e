import { dateText } from "../kernels/calendar/date-text.ts"
import { moneyText } from "../kernels/money.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import { priceChange } from "../orders/change.ts"
import { clientSheet } from "./client-sheet.ts"
import type { Account, Change, JobResult } from "./job-result.ts"

/** Changes to the agreed work: the running account, what each adds and leaves out, and a form for the next. */
export function clientVariationsSheet(result: JobResult): SheetModel[] {
  const { account, price, programme } = result
  if (!price) return []
  const blocks: Block[] = [
    {
      kind: "text",
      paragraphs: [
        "A variation is a change to the agreed work: something added, left out or done otherwise. It is written down with its price and with what it does to the finish, and it is done only when you have signed it. What is said on the stair is not agreed.",
      ],
    },
    ...(account ? [runningAccount(account, result), ...account.changes.flatMap(changeBlocks)] : []),
    {
      kind: "boxes",
      caption: "The next change, to fill in by hand",
      labels: ["What is added", "What is left out", "Price with VAT", "Days more or fewer"],
    },
    { kind: "sign", roles: ["Client", "Builder"] },
  ]
  return [
    clientSheet(
      {
        kind: "client-variations",
        title: "Changes and running account",
        purpose: account
          ? `What has changed since the price was agreed: now ${moneyText(price.gross, "£")} with VAT, finish ${dateText(programme.finish)}.`
          : "How a change to the agreed work is asked for, priced and signed.",
      },
      blocks,
    ),
  ]
}

/** How a variation stands, in words. */
export function standing({ variation }: Pick<Change, "variation">): string {
  if (variation.accepted) return `accepted ${dateText(variation.accepted)}`
  if (variation.declined) return `declined ${dateText(variation.declined)}`
  return "open: not part of the job until signed"
}

/** The agreed price, each change, and what it comes to: only accepted changes count. */
export function runningAccount({ contract, changes }: Account, result: JobResult): Block {
  const signed = (amount: Parameters<typeof moneyText>[0]) =>
    amount.isNegative() || amount.isZero() ? moneyText(amount, "") : `+${moneyText(amount, "")}`
  const row = ({ variation, before, after }: Change): Row => {
    const change = before.price && after?.price ? priceChange(before.price, after.price) : null
    const money = change ? [signed(change.net), signed(change.vat), signed(change.gross)] : ["–", "–", "–"]
    const counted = variation.accepted ? money : money.map((each) => (each === "–" ? each : `(${each})`))
    return {
      cells: [
        `${variation.id} ${variation.what}: ${standing({ variation })}`,
        ...counted,
        after ? dateText(after.programme.finish) : "–",
      ],
    }
  }
  const sum = (what: string, of: JobResult, as?: Row["as"]): Row => ({
    as,
    cells: [
      what,
      moneyText(of.price!.net, ""),
      moneyText(of.price!.vat, ""),
      moneyText(of.price!.gross, ""),
      dateText(of.programme.finish),
    ],
  })
  const open = changes.some(({ variation }) => !variation.accepted && !variation.declined)
  return {
    kind: "table",
    caption: "Running account",
    columns: [
      { label: "What", width: 38 },
      { label: "Before VAT £", as: "figure", width: 14 },
      { label: "VAT £", as: "figure", width: 12 },
      { label: "With VAT £", as: "figure", width: 14 },
      { label: "Finish", as: "figure", width: 22 },
    ],
    rows: [
      sum("Price and finish as first agreed", contract, "total"),
      ...changes.map(row),
      sum("Price and finish now", result, "total"),
    ],
    ...(open
      ? {
          note: "Figures in brackets are not counted: the change is open. Its finish is what it would be if you accept.",
        }
      : {}),
  }
}

function changeBlocks({ variation, before, after }: Change): Block[] {
  if (!before.price || !after?.price || variation.declined) return []
  const { added, leftOut, net, vat, gross } = priceChange(before.price, after.price)
  const { finish } = after.programme
  const moved =
    finish === before.programme.finish
      ? `The finish stays ${dateText(finish)}.`
      : `The finish moves from ${dateText(before.programme.finish)} to ${dateText(finish)}: the order of work is found anew.`
  const line = (what: string, amount: typeof net, as?: Row["as"]): Row => ({
    as,
    cells: [what, moneyText(amount, "")],
  })
  return [
    {
      kind: "table",
      caption: `${variation.id}: ${variation.what}`,
      columns: [
        {
          label: `Asked for by the ${variation.asked}, ${dateText(variation.on)}; ${standing({ variation })}`,
          width: 78,
        },
        { label: "£", as: "figure", width: 22 },
      ],
      rows: [
        line("Added", added),
        line("Left out", leftOut),
        line("VAT on the difference", vat),
        line("The price changes by", gross, "total"),
      ],
      note: [variation.why ? `Why: ${variation.why}` : "", moved].filter(Boolean).join(" "),
    },
    ...(variation.accepted
      ? []
      : [{ kind: "sign" as const, roles: [`Client accepts ${variation.id}`, "Builder"] }]),
  ]
}
