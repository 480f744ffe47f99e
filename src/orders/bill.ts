import type { MoneyFile } from "../intake/schema/money.ts"
import { type Money, money, nothing, shareOut, sumOf, taxOn } from "../kernels/money.ts"
import type { Stage } from "../trades/stages.ts"

/** What a line of the bill pays for. */
export type LineKind = "labour" | "materials" | "plant" | "provisional" | "sum"

/** A cost before it is priced: what, for whom, where and when. */
export interface Cost {
  kind: LineKind
  what: string
  /** Product id, for materials. */
  product?: string
  trade: string | null
  room: string | null
  stage: Stage | null
  cost: Money
}

/** The smallest line of the price: whole pence, in one room, trade, stage and rate of VAT. Every total is a sum of these. */
export interface BillLine extends Cost {
  /** Its share of overhead and profit, and of the contingency. */
  overhead: Money
  contingency: Money
  /** Before tax: cost, overhead and contingency. */
  net: Money
  /** Place of its rate in `Tax[]`. */
  rate: number
  /** Its share of that rate's tax. */
  vat: Money
}

/** One rate of VAT with its condition: worked out once, on all lines that carry it. */
export interface Tax {
  percent: number
  because: string
  net: Money
  vat: Money
}

/** The kinds of cost that overhead, profit and contingency are added to; allowances and agreed sums stand as they are. */
const carriesOverhead: ReadonlySet<LineKind> = new Set(["labour", "materials", "plant"])

/**
 * The bill: costs with their shares of overhead and profit, contingency and VAT. Each of these is worked out once on the whole, rounded
 * half up to the penny, and shared out in whole pence; so lines add up to the same totals whichever way they are grouped.
 */
export function billOf(costs: readonly Cost[], file: MoneyFile): { lines: BillLine[]; taxes: Tax[] } {
  const bases = costs.map(({ kind, cost }) => (carriesOverhead.has(kind) ? cost : nothing))
  const base = sumOf(bases)
  const overheads = shareOut(taxOn(base, file.overheadAndProfit), bases)
  const contingencies = shareOut(taxOn(base, file.contingency), bases)
  const rates = ratesOf(file)
  const priced = costs.map((cost, index) => ({
    ...cost,
    overhead: carriesOverhead.has(cost.kind) ? overheads[index]! : nothing,
    contingency: carriesOverhead.has(cost.kind) ? contingencies[index]! : nothing,
    rate: rateOf(cost, file, rates),
  }))
  const netOf = (line: (typeof priced)[number]) => line.cost.plus(line.overhead).plus(line.contingency)
  const vats = new Map<(typeof priced)[number], Money>()
  const taxes = rates.map((rate, index): Tax => {
    const own = priced.filter((line) => line.rate === index)
    const net = sumOf(own.map(netOf))
    const vat = taxOn(net, rate.percent)
    const shares = shareOut(vat, own.map(netOf))
    own.forEach((line, at) => {
      vats.set(line, shares[at]!)
    })
    return { ...rate, net, vat }
  })
  return {
    lines: priced.map((line) => ({ ...line, net: netOf(line), vat: vats.get(line)! })),
    taxes,
  }
}

type Rate = Pick<Tax, "percent" | "because">

/** The job's own rate first, then each other rate with its condition. */
function ratesOf({ vat }: MoneyFile): Rate[] {
  const all = [vat, ...vat.except]
  const key = ({ percent, because }: Rate) => `${percent} ${because}`
  return all
    .filter((rate, index) => all.findIndex((other) => key(other) === key(rate)) === index)
    .map(({ percent, because }) => ({ percent, because }))
}

function rateOf(cost: Cost, { vat }: MoneyFile, rates: readonly Rate[]): number {
  const found = vat.except.find(
    ({ trades, rooms, products, lines }) =>
      (!trades || (cost.trade !== null && trades.includes(cost.trade))) &&
      (!rooms || (cost.room !== null && rooms.includes(cost.room))) &&
      (!products || (cost.product !== undefined && products.includes(cost.product))) &&
      (!lines || (cost.kind !== "materials" && cost.kind !== "labour" && lines.includes(cost.what))),
  )
  const { percent, because } = found ?? vat
  return rates.findIndex((rate) => rate.percent === percent && rate.because === because)
}

/** One group of a bill: totals in whole pence, and what the tax would be if it were worked out on the group alone. */
export interface Group<K> {
  key: K
  net: Money
  vat: Money
  gross: Money
  /** VAT of the group worked out and rounded by itself, rate by rate; differs by pence from its share. */
  vatAlone: Money
}

/** The lines summed by any key, groups in the order in which they first come. */
export function grouped<K>(
  lines: readonly BillLine[],
  taxes: readonly Tax[],
  keyOf: (line: BillLine) => K,
): Group<K>[] {
  const groups = new Map<K, BillLine[]>()
  for (const line of lines) {
    const key = keyOf(line)
    const own = groups.get(key)
    if (own) own.push(line)
    else groups.set(key, [line])
  }
  return [...groups].map(([key, own]) => {
    const net = sumOf(own.map((line) => line.net))
    const vat = sumOf(own.map((line) => line.vat))
    const vatAlone = sumOf(
      taxes.map(({ percent }, rate) =>
        taxOn(sumOf(own.filter((line) => line.rate === rate).map((line) => line.net)), percent),
      ),
    )
    return { key, net, vat, gross: net.plus(vat), vatAlone }
  })
}

/** A sum in pence split in two, each rounded once: the part and what is left. */
export function splitBy(total: Money, share: number): { part: Money; rest: Money } {
  const [part, rest] = shareOut(total, [money(share), money(1).minus(share)])
  return { part: part!, rest: rest! }
}
