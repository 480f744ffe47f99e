import type { MoneyFile } from "../intake/schema/programme.ts"
import { lineTotal, type Money, money, sumOf, taxOn, toPence } from "../kernels/money.ts"
import { roundHalfUp } from "../kernels/units.ts"
import type { Programme } from "../programme/programme.ts"
import type { OrderLine } from "./orders.ts"

/** One line of the price, to the penny. */
export interface PriceLine {
  what: string
  amount: Money
}

/** The price of the job: every line is rounded half up to the penny once, and every total is the sum of its lines. */
export interface Price {
  materials: PriceLine[]
  labour: { crew: string; hours: number; rate: Money; amount: Money }[]
  provisional: PriceLine[]
  materialsTotal: Money
  labourTotal: Money
  provisionalTotal: Money
  overheadAndProfit: Money
  contingency: Money
  net: Money
  vatPercent: number
  vatBecause: string
  vat: Money
  gross: Money
}

/** Working hours are priced to the tenth of an hour. */
const hourDecimals = 1

/** The price of a job from its orders, its programme's labour and its rates. */
export function priceOf(lines: readonly OrderLine[], programme: Programme, file: MoneyFile): Price {
  const materials = lines.map((line) => ({ what: line.product.name, amount: line.total }))
  const labour = [...programme.labour].map(([crew, worked]) => {
    const hours = roundHalfUp(worked, hourDecimals)
    const rate = money(file.rates.find((each) => each.crew === crew)?.perHour ?? "0")
    return { crew, hours, rate, amount: lineTotal(hours, rate) }
  })
  const provisional = file.provisional.map((each) => ({
    what: each.what,
    amount: toPence(money(each.amount)),
  }))
  const materialsTotal = sumOf(materials.map((line) => line.amount))
  const labourTotal = sumOf(labour.map((line) => line.amount))
  const provisionalTotal = sumOf(provisional.map((line) => line.amount))
  const overheadAndProfit = taxOn(materialsTotal.plus(labourTotal), file.overheadAndProfit)
  const contingency = taxOn(materialsTotal.plus(labourTotal), file.contingency)
  const net = sumOf([materialsTotal, labourTotal, provisionalTotal, overheadAndProfit, contingency])
  const vat = taxOn(net, file.vat.percent)
  return {
    materials,
    labour,
    provisional,
    materialsTotal,
    labourTotal,
    provisionalTotal,
    overheadAndProfit,
    contingency,
    net,
    vatPercent: file.vat.percent,
    vatBecause: file.vat.because,
    vat,
    gross: net.plus(vat),
  }
}
