import type { MoneyFile } from "../intake/schema/money.ts"
import type { Variation } from "../intake/schema/variations.ts"
import { lineTotal, type Money, money, shareOut, sumOf, toPence } from "../kernels/money.ts"
import { roundHalfUp } from "../kernels/units.ts"
import type { Programme } from "../programme/programme.ts"
import type { Stage } from "../trades/stages.ts"
import { type BillLine, billOf, type Cost, type LineKind, splitBy, type Tax } from "./bill.ts"
import type { OrderLine } from "./orders.ts"

/** One line of the price, to the penny. */
export interface PriceLine {
  what: string
  amount: Money
}

/** One product: what it costs, and how much of that is waste, spares and what fills up whole packs. */
export interface MaterialLine extends PriceLine {
  waste: Money
}

/**
 * The price of the job. One rounding rule: a line is rounded half up to the penny once, every total is the sum of its lines, and what is
 * worked out on a whole (overhead and profit, contingency, VAT of each rate, a pack that several rooms share) is shared out in whole
 * pence.
 */
export interface Price {
  /** The smallest lines, by room, trade, stage and rate of VAT; whatever is printed is a sum of these. */
  bill: BillLine[]
  materials: MaterialLine[]
  labour: { crew: string; hours: number; rate: Money; amount: Money }[]
  plant: PriceLine[]
  provisional: PriceLine[]
  /** Sums of accepted variations, those left out with a minus. */
  sums: PriceLine[]
  materialsTotal: Money
  labourTotal: Money
  plantTotal: Money
  provisionalTotal: Money
  sumsTotal: Money
  overheadAndProfit: Money
  contingency: Money
  net: Money
  taxes: Tax[]
  vat: Money
  gross: Money
}

/** What is priced: orders, the programme's labour, the rates, and sums of variations. */
export interface PriceTask {
  lines: readonly OrderLine[]
  programme: Programme
  file: MoneyFile
  sums: Variation["sums"]
}

/** Working hours are priced to the tenth of an hour. */
const hourDecimals = 1

/** The price of a job from its orders, its programme's labour and its rates. */
export function priceOf({ lines, programme, file, sums }: PriceTask): Price {
  const labour = [...programme.labour].map(([crew, worked]) => {
    const hours = roundHalfUp(worked, hourDecimals)
    const rate = money(file.rates.find((each) => each.crew === crew)?.perHour ?? "0")
    return { crew, hours, rate, amount: lineTotal(hours, rate) }
  })
  const plant = file.plant.map(({ what, number, amount }) => ({
    what,
    amount: lineTotal(number, money(amount)),
  }))
  const provisional = file.provisional.map(({ what, amount }) => ({ what, amount: toPence(money(amount)) }))
  const agreed = sums.map(({ what, amount, omit }) => ({
    what,
    amount: toPence(money(omit ? `-${amount}` : amount)),
  }))
  const everywhere =
    (kind: LineKind) =>
    (line: PriceLine): Cost => ({
      kind,
      what: line.what,
      trade: null,
      room: null,
      stage: null,
      cost: line.amount,
    })
  const { lines: bill, taxes } = billOf(
    [
      ...labour.flatMap((each) => labourCosts(each, programme)),
      ...lines.flatMap(materialCosts),
      ...plant.map(everywhere("plant")),
      ...provisional.map(everywhere("provisional")),
      ...agreed.map(everywhere("sum")),
    ],
    file,
  )
  const total = (own: readonly { amount: Money }[]) => sumOf(own.map((line) => line.amount))
  const materials = lines.map(materialLine)
  const net = sumOf(bill.map((line) => line.net))
  const vat = sumOf(taxes.map((tax) => tax.vat))
  return {
    bill,
    materials,
    labour,
    plant,
    provisional,
    sums: agreed,
    materialsTotal: total(materials),
    labourTotal: total(labour),
    plantTotal: total(plant),
    provisionalTotal: total(provisional),
    sumsTotal: total(agreed),
    overheadAndProfit: sumOf(bill.map((line) => line.overhead)),
    contingency: sumOf(bill.map((line) => line.contingency)),
    net,
    taxes,
    vat,
    gross: net.plus(vat),
  }
}

/** A crew's amount shared out by its hours in each room, trade and stage. */
function labourCosts({ crew, amount }: Price["labour"][number], programme: Programme): Cost[] {
  const name = programme.crews.find((each) => each.id === crew)?.name ?? crew
  const hours = new Map<string, { trade: string; room: string | null; stage: Stage; hours: number }>()
  for (const { step } of programme.steps.filter((each) => each.crew === crew)) {
    const key = `${step.trade}/${step.room}/${step.stage}`
    const sum = hours.get(key)?.hours ?? 0
    hours.set(key, { trade: step.trade, room: step.room, stage: step.stage, hours: sum + step.hours })
  }
  const parts = [...hours.values()].filter((part) => part.hours > 0)
  const shares = shareOut(
    amount,
    parts.map((part) => part.hours),
  )
  return parts.map(({ trade, room, stage }, index) => ({
    kind: "labour",
    what: name,
    trade,
    room,
    stage,
    cost: shares[index]!,
  }))
}

/** A product's amount shared out by what each room takes. */
function materialCosts({ product, total, uses }: OrderLine): Cost[] {
  const shares = shareOut(
    total,
    uses.map((use) => use.gross),
  )
  const cost = (index: number): Omit<Cost, "trade" | "room" | "stage"> => ({
    kind: "materials",
    what: product.name,
    product: product.id,
    cost: shares[index] ?? total,
  })
  if (uses.length === 0) return [{ ...cost(0), trade: null, room: null, stage: null }]
  return uses.map(({ trade, room, stage }, index) => ({ ...cost(index), trade, room, stage }))
}

function materialLine(line: OrderLine): MaterialLine {
  const needed = line.bought > 0 ? Math.min(1, line.net / line.bought) : 1
  return { what: line.product.name, amount: line.total, waste: splitBy(line.total, needed).rest }
}
