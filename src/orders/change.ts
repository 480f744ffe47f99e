import { type Money, money, nothing, sumOf, toPence } from "../kernels/money.ts"
import { roundHalfUp } from "../kernels/units.ts"
import type { BillLine } from "./bill.ts"
import type { OrderLine } from "./orders.ts"
import type { Price } from "./price.ts"

/** One cost that a variation changes: positive where it is added, negative where it is left out. */
export interface ChangedCost {
  kind: BillLine["kind"]
  what: string
  trade: string | null
  room: string | null
  cost: Money
}

/** What a variation does to the price, to the penny. */
export interface PriceChange {
  /** What is added and what is left out, before VAT, overhead and profit included; together they are `net`. */
  added: Money
  leftOut: Money
  net: Money
  vat: Money
  gross: Money
  /** Costs that change, before overhead and profit; with `overhead` they make `net`. */
  costs: ChangedCost[]
  overhead: Money
}

/**
 * The price after a variation less the price before: exactly what the running account grows by. What is left out is rounded once with its
 * overhead; what is added is the rest, so the two always make the difference.
 */
export function priceChange(before: Price, after: Price): PriceChange {
  const net = after.net.minus(before.net)
  const vat = after.vat.minus(before.vat)
  const costs = changedCosts(before, after)
  const cost = sumOf(costs.map((each) => each.cost))
  const bare = sumOf(costs.filter((each) => each.cost.isNegative()).map((each) => each.cost))
  const onlyOmits = costs.every((each) => each.cost.isNegative())
  const overhead = net.minus(cost)
  const leftOut = onlyOmits ? net : bare.isZero() ? nothing : toPence(bare.times(uplift(after)))
  return { added: net.minus(leftOut), leftOut, net, vat, gross: net.plus(vat), costs, overhead }
}

/** What a pound of cost grows to with overhead, profit and contingency. */
function uplift({ overheadAndProfit, contingency, labourTotal, materialsTotal, plantTotal }: Price): Money {
  const base = sumOf([labourTotal, materialsTotal, plantTotal])
  return base.isZero() ? money(1) : base.plus(overheadAndProfit).plus(contingency).dividedBy(base)
}

/** Costs by what they are for, where they differ: goods over the whole job, labour by crew. */
function changedCosts(before: Price, after: Price): ChangedCost[] {
  const keyOf = (line: BillLine) => `${line.kind}/${line.product ?? line.what}`
  const sums = new Map<string, { line: BillLine; cost: Money; rooms: Map<string | null, Money> }>()
  const add = (line: BillLine, sign: 1 | -1) => {
    const key = keyOf(line)
    const own = sums.get(key) ?? { line, cost: nothing, rooms: new Map() }
    const amount = line.cost.times(sign)
    own.cost = own.cost.plus(amount)
    own.rooms.set(line.room, (own.rooms.get(line.room) ?? nothing).plus(amount))
    sums.set(key, own)
  }
  for (const line of before.bill) add(line, -1)
  for (const line of after.bill) add(line, 1)
  return [...sums.values()]
    .filter(({ cost }) => !cost.isZero())
    .map(({ line, cost, rooms }) => {
      const changed = [...rooms].filter(([, amount]) => !amount.isZero()).map(([room]) => room)
      return {
        kind: line.kind,
        what: line.what,
        trade: line.kind === "labour" ? null : line.trade,
        room: changed.length === 1 ? changed[0]! : null,
        cost,
      }
    })
}

/** One product whose order changes. */
export interface OrderChange {
  line: OrderLine
  /** Bought before and now, in the unit of the need; 0 where it was or is not bought. */
  was: number
  now: number
  /** Packs before and now, `null` where there are none. */
  before: OrderLine | null
  after: OrderLine | null
}

/** Products whose packs or days of ordering differ, in the order of the list. */
export function orderChanges(before: readonly OrderLine[], after: readonly OrderLine[]): OrderChange[] {
  const ids = [...new Set([...after, ...before].map((line) => line.product.id))]
  return ids.flatMap((id): OrderChange[] => {
    const was = before.find((line) => line.product.id === id) ?? null
    const now = after.find((line) => line.product.id === id) ?? null
    const same = was && now && packsKey(was) === packsKey(now) && was.orderBy === now.orderBy
    if (same) return []
    const line = (now ?? was)!
    return [
      {
        line,
        was: roundHalfUp(was?.bought ?? 0, 3),
        now: roundHalfUp(now?.bought ?? 0, 3),
        before: was,
        after: now,
      },
    ]
  })
}

function packsKey({ packs }: OrderLine): string {
  return packs.map((pack) => `${pack.count} ${pack.size}`).join(" ")
}
