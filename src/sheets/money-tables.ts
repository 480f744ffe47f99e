import { moneyText } from "../kernels/money.ts"
import type { Block, Row } from "../kernels/paper.ts"
import { type BillLine, type Group, grouped } from "../orders/bill.ts"
import type { Price } from "../orders/price.ts"
import type { JobResult } from "./job-result.ts"

/** The one rounding rule, as it is printed wherever money is. */
export const roundingRule =
  "Every line is rounded to the nearest penny once, half a penny up; every total is the sum of its lines. VAT is worked out once on all that carries the same rate and shared out over the lines in whole pence, so that it adds up the same by room, by kind of work and by rate."

/** Where a line's share of the VAT is a penny or so off what the line alone would give: said in words, or null where all agree. */
export function pennyText(groups: readonly Group<string>[]): string | null {
  const off = groups.filter((group) => !group.vat.equals(group.vatAlone))
  if (off.length === 0) return null
  const each = off.map(({ key, vatAlone }) => `${moneyText(vatAlone, "£")} for ${key}`)
  return `A penny of difference: the VAT of a line is its share of the whole, so that the lines add up. Worked out on the line alone it would be ${each.join("; ")}.`
}

/** Lines of a price under one heading, with their sum. What `order` names comes first, in that order. */
export function moneyTable(
  caption: string,
  price: Price,
  {
    label,
    keyOf,
    order = [],
  }: { label: string; keyOf: (line: BillLine) => string; order?: readonly string[] },
): Block {
  const place = ({ key }: Group<string>) => (order.includes(key) ? order.indexOf(key) : order.length)
  const groups = grouped(price.bill, price.taxes, keyOf).sort((a, b) => place(a) - place(b))
  const line = (what: string, { net, vat, gross }: Pick<Group<string>, "net" | "vat" | "gross">): Row => ({
    cells: [what, moneyText(net, ""), moneyText(vat, ""), moneyText(gross, "")],
  })
  const penny = pennyText(groups)
  return {
    kind: "table",
    caption,
    columns: [
      { label, width: 46 },
      { label: "Before VAT £", as: "figure", width: 18 },
      { label: "VAT £", as: "figure", width: 16 },
      { label: "With VAT £", as: "figure", width: 20 },
    ],
    rows: [...groups.map((group) => line(group.key, group)), { ...line("Together", price), as: "total" }],
    ...(penny ? { note: penny } : {}),
  }
}

/** The rates of VAT with the condition that makes each so. */
export function vatTable({ taxes }: Price): Block {
  const used = taxes.filter((tax) => !tax.net.isZero())
  return {
    kind: "table",
    caption: "VAT by rate",
    columns: [
      { label: "Rate", as: "figure", width: 10 },
      { label: "On £", as: "figure", width: 16 },
      { label: "VAT £", as: "figure", width: 16 },
      { label: "Because", width: 58 },
    ],
    rows: used.map((tax) => ({
      cells: [`${tax.percent} %`, moneyText(tax.net, ""), moneyText(tax.vat, ""), tax.because],
    })),
    note: "A rate holds only while its reason does. This is not tax advice: ask a tax adviser or the tax office before you rely on it. If another rate turns out to be right, the VAT is charged or paid back at that rate.",
  }
}

/** Ids of the rulebook entries that the rates of a price rest on. */
export function vatRests({ taxes }: Price): string[] {
  const entry = (percent: number) =>
    percent === 0 ? "vat-zero" : percent === 5 ? "vat-reduced" : "vat-standard"
  return [...new Set(taxes.filter((tax) => !tax.net.isZero()).map((tax) => entry(tax.percent)))]
}

/** The room of a bill's line in words; allowances and agreed sums each by their own name. */
export function roomOfLine(line: BillLine, { house }: Pick<JobResult, "house">): string {
  if (line.kind === "provisional") return `Provisional sum: ${line.what}`
  if (line.kind === "sum") return `Agreed change: ${line.what}`
  return house.rooms.find((room) => room.id === line.room)?.name ?? "The whole house"
}

/** The kind of work of a bill's line in words. */
export function workOfLine(line: BillLine, { trades }: Pick<JobResult, "trades">): string {
  if (line.kind === "provisional") return "Provisional sums"
  if (line.kind === "sum") return "Agreed changes"
  return trades.find((trade) => trade.id === line.trade)?.title ?? "Hired things and skips"
}
