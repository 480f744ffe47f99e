import type { Product, ProductsFile } from "../intake/schema/products.ts"
import { addDays } from "../kernels/calendar/dates.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import type { IsoDate } from "../kernels/units.ts"
import type { DatedStep, Programme } from "../programme/programme.ts"
import type { JobFacts, Quantity } from "../trades/trade.ts"
import { dropDates, orderBy, type Supplier, supplierOf, workingDayBefore } from "./delivery-dates.ts"
import { firstUse } from "./first-use.ts"
import { carryNote, longestSide, massesOf } from "./mass.ts"
import type { CutList, OrderLine, ProductUse } from "./orders.ts"
import { packsFor, packsTotal } from "./packs.ts"

interface OrderTask {
  quantities: readonly Quantity[]
  lists: readonly CutList[]
  products: ReadonlyMap<string, Product>
  inHand: ProductsFile["inHand"]
  suppliers: readonly Supplier[]
  programme: Programme
  job: JobFacts
  preparedOn: IsoDate
}

/**
 * One line a product: need summed over rooms and trades, less what is in hand, in whole packs; the days it may come, the day it comes
 * with what else its supplier brings, and the last day to order. Sorted by supplier, then name. What is all in hand is not ordered.
 */
export function orderList(task: OrderTask): OrderLine[] {
  const { quantities, lists, products } = task
  const wanted = new Map<string, Quantity[]>()
  for (const quantity of quantities) {
    if (!quantity.product) continue
    wanted.set(quantity.product, [...(wanted.get(quantity.product) ?? []), quantity])
  }
  for (const list of lists) if (!wanted.has(list.product.id)) wanted.set(list.product.id, [])
  const lines = [...wanted].flatMap(([id, takes]): OrderLine[] => {
    const product = products.get(id)
    if (!product) return []
    const list = lists.find((each) => each.product.id === id)
    if (product.kind === "length" && !list) return []
    const line = lineOf(product, { takes, list }, task)
    return line.packs.every((pack) => pack.count === 0) ? [] : [line]
  })
  return withDrops(lines, task).sort(
    (a, b) => compare(a.product.supplier, b.product.supplier) || compare(a.product.name, b.product.name),
  )
}

function lineOf(
  product: Product,
  { takes, list }: { takes: readonly Quantity[]; list: CutList | undefined },
  { programme, job, inHand }: OrderTask,
): OrderLine {
  const uses = list ? usesOfList(list) : usesOf(takes)
  const dated = uses.map((use) => ({ use, first: firstUse(product, use, programme.steps) }))
  const gross = list ? 0 : sum(uses, (use) => use.gross)
  const { packs, bought } = packsFor(product, Math.max(0, gross - heldOf(product, inHand)), list)
  const first = dated.flatMap((each) => each.first ?? []).sort((a, b) => a.start - b.start)[0]
  const neededOn = first ? clockAt(first.start, programme.zone).date : programme.start
  const masses = massesOf(product, packs, job.rules)
  const longest = longestSide(product)
  const window = windowOf({ product, neededOn, first, rooms: uses.map((use) => use.room) }, programme, job)
  return {
    product,
    net: sum(uses, (use) => use.net),
    gross: list ? bought : gross,
    unit: list ? "m" : (takes[0]?.unit ?? "nr"),
    packs,
    bought,
    total: packsTotal(packs),
    uses: dated.map(({ use, first: step }) => ({ ...use, stage: step?.step.stage ?? null })),
    trades: distinct(uses.map((use) => use.trade)),
    rooms: distinct(uses.flatMap((use) => use.room ?? [])),
    neededOn,
    ...window,
    comesOn: window.latest,
    orderBy: window.latest,
    late: false,
    ...masses,
    longest,
    carry: carryNote(longest, masses.packMass, job),
  }
}

type Take = Omit<ProductUse, "stage">

function usesOf(takes: readonly Quantity[]): Take[] {
  return takes.map(({ trade, room, net, gross }) => ({ trade, room, net, gross }))
}

/** Metres of each room and trade; waste and spares are shared by all of them. */
function usesOfList({ pieces }: CutList): Take[] {
  const keys = distinct(pieces.map((piece) => `${piece.trade}/${piece.room}`))
  return keys.map((key): Take => {
    const own = pieces.filter((piece) => `${piece.trade}/${piece.room}` === key)
    const run = sum(own, (piece) => piece.length) / 1000
    return { trade: own[0]!.trade, room: own[0]!.room, net: run, gross: run }
  })
}

/** What is in hand of a product, in the unit of the need; lengths in hand are sawn first by the saw plan itself. */
function heldOf(product: Product, inHand: OrderTask["inHand"]): number {
  const units = sum(
    inHand.filter((each) => each.product === product.id),
    (each) => each.amount,
  )
  if (units === 0 || product.kind === "length") return 0
  const [pack] = packsFor(product, Number.MIN_VALUE).packs
  return units * (pack?.holds ?? 0)
}

/** Boards, leaves and bare timber take up the damp of a house under new plaster. */
const takesDamp = (product: Product) =>
  product.kind === "board" ||
  product.kind === "leaf" ||
  (product.kind === "length" && (product.material === "hardwood" || product.material === "softwood"))

interface Wanted {
  product: Product
  neededOn: IsoDate
  first: DatedStep | undefined
  rooms: readonly (string | null)[]
}

/**
 * The days on which a line may come: no longer before it is needed than goods may lie in the house; timber not before the plaster of the
 * rooms it is for is dry, boards not before their heating is up either; at latest the working day before, but what acclimatises comes on
 * the very day, straight into its rooms.
 */
function windowOf(
  { product, neededOn, first, rooms }: Wanted,
  programme: Programme,
  { rules }: JobFacts,
): Pick<OrderLine, "earliest" | "latest" | "notBefore" | "straightIn"> {
  const straightIn = first?.step.stage === "acclimatise"
  const latest = straightIn ? neededOn : workingDayBefore(neededOn, programme.calendar)
  const wet = takesDamp(product) ? lastReady(programme, rooms, "dry-out") : null
  const cold = product.kind === "board" ? lastReady(programme, rooms, "heat") : null
  const held = [
    ...(wet ? [{ date: wet, why: "plaster dry" }] : []),
    ...(cold ? [{ date: cold, why: "heating on and steady" }] : []),
  ].sort((a, b) => compare(b.date, a.date))[0]
  const soonest = addDays(neededOn, -rules.value("delivery-early-most"))
  const wrongBefore = held && held.date <= latest ? held : undefined
  const earliest = wrongBefore && wrongBefore.date > soonest ? wrongBefore.date : soonest
  return { earliest, latest, notBefore: wrongBefore?.why ?? null, straightIn }
}

/** The day on which the last of these rooms has a stage of drying or warming behind it. */
function lastReady(programme: Programme, rooms: readonly (string | null)[], stage: string): IsoDate | null {
  const ready = programme.steps
    .filter(({ step }) => step.stage === stage && rooms.includes(step.room))
    .map((each) => clockAt(each.ready, programme.zone).date)
    .sort()
  return ready[ready.length - 1] ?? null
}

/** Lines with the day they come, supplier by supplier, and the last day to order. */
function withDrops(
  lines: readonly OrderLine[],
  { suppliers, programme, preparedOn }: OrderTask,
): OrderLine[] {
  const { calendar } = programme
  return distinct(lines.map((line) => line.product.supplier)).flatMap((name) => {
    const supplier = supplierOf(name, suppliers)
    const own = lines.filter((line) => line.product.supplier === name)
    const dates = dropDates(own, supplier, calendar)
    return own.map((line, index): OrderLine => {
      const by = orderBy(dates[index]!, line.product.lead, supplier, calendar)
      return { ...line, comesOn: dates[index]!, orderBy: by, late: by < preparedOn }
    })
  })
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
