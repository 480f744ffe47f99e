import { describe, expect, it } from "vitest"
import type { Product } from "../../src/intake/schema/products.ts"
import { orderList } from "../../src/orders/order-list.ts"
import type { Quantity } from "../../src/trades/trade.ts"
import { boardProduct, eachProduct, leafProduct, liquidProduct, rollProduct } from "../fixtures/products.ts"
import { datedOf, programmeOf, quantityOf, stepOf } from "../fixtures/programme.ts"
import { jobFacts, surveyed } from "../fixtures/rooms.ts"

const rooms = [surveyed(), surveyed({ id: "R2" })]

/** Order lines where floors in R1 begin on the day given and decorating in R2 with it. */
function linesOn(
  start: string,
  quantities: Quantity[],
  products: Product[],
  inHand: { product: string; amount: number }[] = [],
) {
  const steps = [
    stepOf({ key: "lay", trade: "floors", stage: "floor" }),
    stepOf({ key: "paint", room: "R2", stage: "last-coat" }),
  ]
  return orderList({
    quantities,
    lists: [],
    inHand,
    suppliers: [],
    products: new Map(products.map((product) => [product.id, product])),
    programme: datedOf(steps, rooms, programmeOf({ start })),
    job: jobFacts({ rooms, products }),
    preparedOn: "2027-03-01",
  })
}

describe("the last day to order", () => {
  /**
   * Counted on the calendar by hand: on site the working day before it is needed, back by the lead time in days, and on a
   * working day. Good
   * Friday is 26 March and Easter Monday 29 March 2027; 3 May 2027 is the early May bank holiday (gov.uk, bank holidays).
   */
  it.each([
    ["2027-03-18", 1, "2027-03-16", "within a week: Wednesday less a day"],
    ["2027-03-16", 1, "2027-03-12", "Monday's day before is Friday"],
    ["2027-03-31", 1, "2027-03-25", "over Easter: Tuesday, Monday, weekend and Good Friday passed by"],
    ["2027-05-05", 1, "2027-04-30", "over the early May holiday and its weekend"],
    ["2027-03-31", 10, "2027-03-19", "ten days back is Sunday 21 March; the Friday before it"],
  ])("needed %s with a lead of %i days is %s (%s)", (start, lead, orderBy) => {
    const product = { ...rollProduct, lead }
    const [line] = linesOn(start, [quantityOf({ product: product.id })], [product])
    expect([line?.neededOn, line?.orderBy]).toEqual([start, orderBy])
  })

  it("is late where it lies before the day the pack was prepared", () => {
    const lateness = (start: string) =>
      linesOn(start, [quantityOf({ product: rollProduct.id })], [rollProduct]).map((line) => line.late)
    expect(lateness("2027-03-05")).toEqual([false])
    expect(lateness("2027-03-04")).toEqual([true])
  })
})

describe("the order list", () => {
  it("sums the need of all rooms before it counts packs", () => {
    const need = (room: string, gross: number) =>
      quantityOf({ product: rollProduct.id, room, net: gross - 1, gross })
    const [line, ...more] = linesOn("2027-04-12", [need("R1", 6), need("R2", 4)], [rollProduct])
    expect(more).toEqual([])
    expect(line).toMatchObject({ net: 8, gross: 10, bought: 10, rooms: ["R1", "R2"] })
    expect(line?.packs.map((pack) => pack.count)).toEqual([1])
    expect(line?.total.toFixed(2)).toBe("41.50")
  })

  it("takes what is in hand off the need first, and orders nothing where all is in hand", () => {
    const need = [quantityOf({ product: rollProduct.id, net: 24, gross: 25 })]
    const held = (amount: number) =>
      linesOn("2027-04-12", need, [rollProduct], [{ product: rollProduct.id, amount }]).map(
        (line) => line.packs[0]?.count,
      )
    expect(held(1)).toEqual([2])
    expect(held(3)).toEqual([])
  })

  it("is sorted by supplier and then name, and leaves out what is not bought", () => {
    const products = [rollProduct, eachProduct, liquidProduct, boardProduct]
    const quantities = [
      ...products.map(({ id }) => quantityOf({ product: id })),
      { ...quantityOf({ product: "" }), product: null },
    ]
    const names = linesOn("2027-04-12", quantities, products).map(({ product }) => [
      product.supplier,
      product.name,
    ])
    expect(names).toEqual([
      ["flooring supplier", "Oak board"],
      ["paint merchant", "Matt emulsion"],
      ["timber merchant", "Screw 5.0 × 50"],
      ["timber merchant", "Underlay"],
    ])
  })

  it("says what does not go up the stair and what two people carry", () => {
    const heavy = { ...boardProduct, packMass: 25.5 }
    const notes = linesOn(
      "2027-04-12",
      [leafProduct, heavy, rollProduct].map(({ id }) => quantityOf({ product: id })),
      [leafProduct, heavy, rollProduct],
    ).map((line) => [line.product.id, line.carry])
    expect(notes).toEqual([
      ["leaf", "40 kg: two people"],
      ["oak", "25.5 kg: two people"],
      ["underlay", null],
    ])
  })
})

/**
 * Worked by hand on the calendar of spring 2027: holidays on 26 and 29 March, weekends 20/21 and 27/28 March. Plaster dries for
 * 72 h from Monday 22 March, so until Thursday 25 at 08:00; a day of white; heating on at 08:00 on Tuesday 30 and steady 72 h after it,
 * on Friday 2 April; boards in, laid and doors hung on that day. Four working days back from Friday 2 April: 1 April, 31 and 30 March,
 * 25 March; from Thursday 1 April one more, 24 March.
 */
describe("the days on which goods may come", () => {
  const file = programmeOf({ start: "2027-03-22" })
  const gate = (hours: number) => ({ process: "dry", hours, forbids: [] as [] })
  const steps = [
    stepOf({ key: "dry", stage: "dry-out", hours: 0, gate: gate(72) }),
    stepOf({ key: "white", hours: 8 }),
    stepOf({ key: "heat", stage: "heat", hours: 0.5, gate: gate(72) }),
    stepOf({ key: "lie", trade: "floors", stage: "acclimatise" }),
    stepOf({ key: "lay", trade: "floors", stage: "floor", hours: 4 }),
    stepOf({ key: "hang", trade: "doors", stage: "hang" }),
  ]
  const products = [boardProduct, leafProduct, rollProduct].map((product) => ({
    ...product,
    supplier: "one",
    lead: 4,
  }))
  const programme = datedOf(steps, rooms, file)
  const lines = orderList({
    quantities: products.map(({ id, kind }) =>
      quantityOf({ product: id, trade: kind === "leaf" ? "doors" : "floors" }),
    ),
    lists: [],
    inHand: [],
    suppliers: [{ supplier: "one", leadIn: "working", collect: false }],
    products: new Map(products.map((product) => [product.id, product])),
    programme,
    job: jobFacts({ rooms, products }),
    preparedOn: "2027-03-01",
  })
  const of = (id: string) => {
    const { neededOn, earliest, latest, notBefore, straightIn, comesOn, orderBy } = lines.find(
      (line) => line.product.id === id,
    )!
    return { neededOn, earliest, latest, notBefore, straightIn, comesOn, orderBy }
  }
  const startOf = (key: string) =>
    new Date(programme.steps.find(({ step }) => step.key === key)!.start).toISOString().slice(0, 10)

  it("stand where the hand-worked programme puts its steps", () => {
    expect(["lie", "lay", "hang"].map(startOf)).toEqual(["2027-04-02", "2027-04-02", "2027-04-02"])
  })

  it("are for boards the very day they are carried in, since the heating is steady only then", () => {
    expect(of("oak")).toEqual({
      neededOn: "2027-04-02",
      earliest: "2027-04-02",
      latest: "2027-04-02",
      notBefore: "heating on and steady",
      straightIn: true,
      comesOn: "2027-04-02",
      orderBy: "2027-03-25",
    })
  })

  it("are for a leaf not before the plaster is dry, and at latest the working day before it is hung", () => {
    expect(of("leaf")).toMatchObject({
      earliest: "2027-03-25",
      latest: "2027-04-01",
      notBefore: "plaster dry",
      comesOn: "2027-04-01",
      orderBy: "2027-03-24",
    })
  })
})
