import { dateText } from "../kernels/calendar/date-text.ts"
import { moneyText } from "../kernels/money.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import { paymentPlan } from "../orders/payments.ts"
import { clientSheet } from "./client-sheet.ts"
import type { JobResult } from "./job-result.ts"
import { moneyTable, roomOfLine, roundingRule, vatRests, vatTable, workOfLine } from "./money-tables.ts"

/** The price by room and by kind of work, with VAT by rate; no rates of pay, no margins. */
export function priceSheet(result: JobResult): SheetModel[] {
  const { price } = result
  if (!price) return []
  const rooms = result.house.rooms.map((room) => room.name)
  const trades = result.trades.map((trade) => trade.title)
  const allowances: Block[] =
    price.provisional.length > 0
      ? [
          {
            kind: "text",
            paragraphs: [
              "A provisional sum is an allowance, for work nobody can measure yet. We tell you before we spend it; you pay what the work really costs, be it more or less.",
            ],
          },
        ]
      : []
  return [
    clientSheet(
      {
        kind: "client-price",
        title: "Price",
        purpose: "What the works cost, room by room and by kind of work.",
        rests: vatRests(price),
      },
      [
        {
          kind: "figures",
          items: [
            { label: "Before VAT", value: moneyText(price.net, "£") },
            { label: "VAT", value: moneyText(price.vat, "£") },
            { label: "To pay", value: moneyText(price.gross, "£") },
          ],
        },
        moneyTable("Price by room", price, {
          label: "Room",
          keyOf: (line) => roomOfLine(line, result),
          order: rooms,
        }),
        ...allowances,
        moneyTable("The same price by kind of work", price, {
          label: "Work",
          keyOf: (line) => workOfLine(line, result),
          order: trades,
        }),
        vatTable(price),
        { kind: "text", as: "note", paragraphs: [`How pennies are rounded. ${roundingRule}`] },
      ],
    ),
  ]
}

/** When what is paid: stage payments, what is held back, and each agreed change. */
export function paymentsSheet(result: JobResult): SheetModel[] {
  const { account, moneyFile } = result
  const agreed = account?.contract ?? result
  if (!moneyFile || !agreed.price || !result.price) return []
  const plan = paymentPlan(agreed.price.gross, moneyFile, result.programme)
  if (!plan) return []
  const money = (amount: (typeof plan)["total"]) => (amount.isZero() ? "–" : moneyText(amount, ""))
  const changes = (account?.changes ?? []).flatMap(({ variation, before, after }): Row[] => {
    if (!variation.accepted || !before.price || !after?.price) return []
    const more = after.price.gross.minus(before.price.gross)
    return [
      {
        cells: [
          `Agreed change ${variation.id}: ${variation.what}`,
          "when finished",
          dateText(result.programme.finish),
          money(more),
          "–",
          money(more),
        ],
      },
    ]
  })
  const held = plan.retention
    ? [
        `Of each payment ${plan.retention.percent} % is held back (retention): money you keep until faults have been put right. You pay half of it when the work is finished and half ${plan.retention.months} months later, once the faults you have told us of are mended.`,
      ]
    : []
  return [
    clientSheet(
      {
        kind: "client-payments",
        title: "Payments",
        purpose:
          "What is paid when. A payment falls due when its work is done, whatever the day planned here.",
      },
      [
        {
          kind: "table",
          caption: "Payments, with VAT",
          columns: [
            { label: "For", width: 28 },
            { label: "Planned", as: "figure", width: 21 },
            { label: "Pay by", as: "figure", width: 21 },
            { label: "Worth £", as: "figure", width: 13 },
            { label: "Held back £", as: "figure", width: 12 },
            { label: "To pay £", as: "figure", width: 14 },
          ],
          rows: [
            ...plan.payments.map(
              (each): Row => ({
                cells: [
                  each.percent === null ? each.what : `${each.what} (${each.percent} % of the price)`,
                  dateText(each.reached),
                  dateText(each.payBy),
                  money(each.worth),
                  money(each.heldBack),
                  money(each.toPay),
                ],
              }),
            ),
            ...changes,
            { as: "total", cells: ["Together", "", "", "", "", moneyText(result.price.gross, "")] },
          ],
        },
        {
          kind: "text",
          paragraphs: [
            `Each payment is asked for in writing when its work is done, and paid within ${plan.within} days. Look at the work first; if something is not done, say so in writing and pay for what is.`,
            ...held,
            "Pay only to the account on the signed agreement. If a message gives you another account, ring the builder on the number you have always used before you pay.",
          ],
        },
        { kind: "sign", roles: ["Client", "Builder"] },
      ],
    ),
  ]
}
