import { describe, expect, it } from "vitest"
import { type HoldsGiven, holdsOf, isAnyBroken } from "../../src/orders/holds.ts"
import type { OrderLine } from "../../src/orders/orders.ts"
import { calendarsOf } from "../../src/programme/calendars.ts"
import { boardProduct, leafProduct } from "../fixtures/products.ts"
import { programmeOf, stepOf } from "../fixtures/programme.ts"

const [calendar] = calendarsOf(programmeOf(), "Europe/London", 8)
const use = (trade: string) => ({ trade, room: "R1", net: 1, gross: 1, stage: null })
const lineOf = (product: OrderLine["product"], trade: string) =>
  ({ product, uses: [use(trade)] }) as unknown as OrderLine
const leaf = { ...leafProduct, lead: 15 }
const board = { ...boardProduct, lead: 10 }
const steps = [
  stepOf({ key: "doors/D1/look", trade: "doors", stage: "prepare" }),
  stepOf({ key: "doors/D1/hang", trade: "doors", stage: "hang" }),
  stepOf({ key: "floors/R1/lie", trade: "floors", stage: "acclimatise" }),
  stepOf({ key: "floors/R1/lay", trade: "floors", stage: "floor" }),
]
/** Holds as key and first day, the pack prepared on Monday 8 February 2027. */
const holds = (given: Partial<HoldsGiven>) =>
  holdsOf({
    lines: [],
    steps,
    suppliers: [],
    booked: [],
    decisions: [],
    calendar: calendar!,
    preparedOn: "2027-02-08",
    ...given,
  })
const days = (given: Partial<HoldsGiven>) => holds(given).map(({ key, from }) => [key, from])

describe("what ordered goods hold", () => {
  it("is the hanging of a leaf the working day after its lead time, and not the look at the doorway", () => {
    // Ordered Mon 8 Feb, 15 days: Tue 23 Feb; hung on Wed 24.
    expect(days({ lines: [lineOf(leaf, "doors")] })).toEqual([["doors/D1/hang", "2027-02-24"]])
  })

  it("is boards lying in the room on the very day they come", () => {
    // Ordered Mon 8 Feb, 10 days: Thu 18 Feb; laid not before Fri 19.
    expect(days({ lines: [lineOf(board, "floors")] })).toEqual([
      ["floors/R1/lie", "2027-02-18"],
      ["floors/R1/lay", "2027-02-19"],
    ])
  })

  it("counts working days and waits for the day its supplier comes", () => {
    const supplier = { supplier: leaf.supplier, leadIn: "working" as const, collect: false }
    // 15 working days from Mon 8 Feb: Mon 1 Mar; the supplier comes on Thursdays: 4 Mar.
    const lines = [lineOf(leaf, "doors")]
    expect(days({ lines, suppliers: [supplier] })).toEqual([["doors/D1/hang", "2027-03-02"]])
    expect(days({ lines, suppliers: [{ ...supplier, days: ["thu"] }] })).toEqual([
      ["doors/D1/hang", "2027-03-05"],
    ])
  })

  it("begins with the client's choice where that is still to come, and says so", () => {
    const decisions = [{ by: "2027-03-06", what: "leaf of the doors", product: leaf.id }]
    // Chosen by Sat 6 Mar, ordered Mon 8 Mar, 15 days: Tue 23 Mar; hung on Wed 24.
    const [hold] = holds({ lines: [lineOf(leaf, "doors")], decisions })
    expect(hold).toMatchObject({ from: "2027-03-24", at: { path: ["client", "decisions", 0, "by"] } })
    expect(hold?.because).toContain("waits for the client’s choice by Sat 6 Mar (leaf of the doors)")
    const made = [{ ...decisions[0]!, by: "2027-02-01" }]
    expect(days({ lines: [lineOf(leaf, "doors")], decisions: made })).toEqual([
      ["doors/D1/hang", "2027-02-24"],
    ])
  })

  it("is the booked day where one is booked", () => {
    const booked = [{ product: leaf.id, on: "2027-03-10" }]
    expect(days({ lines: [lineOf(leaf, "doors")], booked })).toEqual([["doors/D1/hang", "2027-03-11"]])
  })

  it("is broken by a step that begins before", () => {
    const found = holds({ lines: [lineOf(leaf, "doors")] })
    expect(isAnyBroken(found, () => "2027-02-23")).toBe(true)
    expect(isAnyBroken(found, () => "2027-02-24")).toBe(false)
    expect(isAnyBroken(found, () => undefined)).toBe(false)
  })
})
