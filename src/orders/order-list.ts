import type { Product } from "../intake/schema/products.ts"
import { addDays } from "../kernels/calendar/dates.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import { isWorkingDay } from "../kernels/calendar/work-calendar.ts"
import { type IsoDate, mmText } from "../kernels/units.ts"
import type { Programme } from "../programme/programme.ts"
import type { JobFacts, Quantity } from "../trades/trade.ts"
import type { CutList, OrderLine } from "./orders.ts"
import { packsFor, packsTotal } from "./packs.ts"

interface OrderTask {
  quantities: readonly Quantity[]
  lists: readonly CutList[]
  products: ReadonlyMap<string, Product>
  programme: Programme
  job: JobFacts
  preparedOn: IsoDate
}

/** One line a product: need summed over rooms and trades, whole packs, price, and the last day to order. Sorted by supplier, then name. */
export function orderList({
  quantities,
  lists,
  products,
  programme,
  job,
  preparedOn,
}: OrderTask): OrderLine[] {
  const wanted = new Map<string, Quantity[]>()
  for (const quantity of quantities) {
    if (!quantity.product) continue
    wanted.set(quantity.product, [...(wanted.get(quantity.product) ?? []), quantity])
  }
  for (const list of lists) if (!wanted.has(list.product.id)) wanted.set(list.product.id, [])
  const lines = [...wanted].flatMap(([id, uses]): OrderLine[] => {
    const product = products.get(id)
    if (!product) return []
    const list = lists.find((each) => each.product.id === id)
    if (product.kind === "length" && !list) return []
    const gross = sum(uses, (use) => use.gross)
    const { packs, bought } = packsFor(product, gross, list)
    const trades = distinct([
      ...uses.map((use) => use.trade),
      ...(list?.pieces.map((piece) => piece.trade) ?? []),
    ])
    const rooms = distinct([
      ...uses.flatMap((use) => use.room ?? []),
      ...(list?.pieces.map((piece) => piece.room) ?? []),
    ])
    const neededOn = firstDay(programme, trades, rooms)
    const orderBy = workingDayBefore(addDays(neededOn, -product.lead), programme)
    return [
      {
        product,
        net: list
          ? list.pieces.reduce((total, piece) => total + piece.length, 0) / 1000
          : sum(uses, (use) => use.net),
        gross: list ? bought : gross,
        unit: list ? "m" : (uses[0]?.unit ?? "nr"),
        packs,
        bought,
        total: packsTotal(packs),
        trades,
        rooms,
        neededOn,
        orderBy,
        late: orderBy < preparedOn,
        carry: carryNote(product, job),
      },
    ]
  })
  return lines.sort(
    (a, b) => compare(a.product.supplier, b.product.supplier) || compare(a.product.name, b.product.name),
  )
}

/** The first day any step of these trades in these rooms is worked on. */
function firstDay(programme: Programme, trades: readonly string[], rooms: readonly string[]): IsoDate {
  const first = programme.steps.find(
    ({ step }) =>
      trades.includes(step.trade) && (step.room === null || rooms.length === 0 || rooms.includes(step.room)),
  )
  return first ? clockAt(first.start, programme.zone).date : programme.start
}

function workingDayBefore(date: IsoDate, programme: Programme): IsoDate {
  let day = addDays(date, -1)
  while (!isWorkingDay(day, programme.calendar)) day = addDays(day, -1)
  return day
}

/** What to mind on the stair: a length over the longest that goes up, a pack heavier than one person lifts. */
function carryNote(product: Product, job: JobFacts): string | null {
  const longest = longestSide(product)
  if (longest > job.carry.longest)
    return `${mmText(longest)} long: cut below, or to no more than ${mmText(job.carry.longest)}`
  const mass = packMass(product)
  if (mass > job.carry.heaviest) return `${mass} kg: two people`
  return null
}

function longestSide(product: Product): number {
  if (product.kind === "length") return Math.max(...product.lengths.map((each) => each.length))
  if (product.kind === "board") return product.length
  if (product.kind === "leaf") return product.height
  return 0
}

function packMass(product: Product): number {
  if (product.kind === "board") return product.packMass
  if (product.kind === "roll" || product.kind === "leaf") return product.mass
  if (product.kind === "tile") return product.boxMass
  if (product.kind === "each") return product.mass ?? 0
  return 0
}

function sum<T>(list: readonly T[], value: (item: T) => number): number {
  return list.reduce((total, item) => total + value(item), 0)
}

function distinct(list: readonly string[]): string[] {
  return [...new Set(list)].sort()
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
