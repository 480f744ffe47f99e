import { describe, expect, it } from "vitest"
import type { Run } from "../../../../src/trades/floors/layout/end-plan.ts"
import { Stock } from "../../../../src/trades/floors/layout/stock.ts"

const limits = {
  lengths: [{ length: 1860, perPack: 1 }],
  boardLength: 1860,
  boardWidth: 189,
  kerf: 3,
  leastEnd: 300,
  stagger: 300,
  strips: { groove: 60, tongue: Number.POSITIVE_INFINITY },
}
const full: Run = { row: 4, name: "4", left: 0, right: 4000, profile: null }
const first: Run = {
  ...full,
  row: 1,
  name: "1",
  profile: [{ from: 0, to: 4000, low: [69, 69], high: [189, 189] }],
}
const last: Run = {
  ...full,
  row: 9,
  name: "9",
  profile: [{ from: 0, to: 4000, low: [0, 0], high: [60, 60] }],
}
type Hand = Pick<Stock, "offcuts" | "boards" | "taken">
const stockOf = (run: Run, hand: Hand = { offcuts: [], boards: 0, taken: [0] }) =>
  new Stock(hand, run, { limits, named: true })

describe("boards and offcuts in hand", () => {
  it("a starter keeps the right end and leaves the left; the saw takes its width", () => {
    const stock = stockOf(full)
    expect(stock.take({ left: 0, right: 700, role: "start" })).toMatchObject({
      board: 1,
      from: 1160,
      to: 1860,
      source: null,
    })
    expect(stock.offcuts).toEqual([
      { board: 1, room: null, of: 1860, from: 0, to: 1157, low: 0, high: 189, mark: "4L" },
    ])
  })

  it("what a starter left ends a row, and begins none", () => {
    const stock = stockOf(full)
    stock.take({ left: 0, right: 700, role: "start" })
    const next = stockOf({ ...full, name: "5" }, stock)
    expect(next.take({ left: 0, right: 700, role: "start" }).source).toBeNull()
    expect(next.take({ left: 2560, right: 3560, role: "finish" })).toMatchObject({
      board: 1,
      from: 0,
      to: 1000,
      source: "4L",
    })
  })

  it("a first row's strip keeps its groove and lays a last row: 120 + 3 + 66", () => {
    const stock = stockOf(first)
    expect(stock.take({ left: 0, right: 1860, role: "start" })).toMatchObject({ low: 69, high: 189 })
    expect(stock.offcuts).toEqual([
      { board: 1, room: null, of: 1860, from: 0, to: 1860, low: 0, high: 66, mark: "1GW" },
    ])
    const end = stockOf(last, stock)
    expect(end.take({ left: 0, right: 1860, role: "start" })).toMatchObject({
      board: 1,
      low: 0,
      high: 60,
      source: "1GW",
    })
    expect(stockOf(full, stock).take({ left: 0, right: 1860, role: "start" }).source).toBeNull()
  })

  it("the input is left as it was", () => {
    const left = { board: 1, room: null, of: 1860, from: 0, to: 900, low: 0, high: 189, mark: "2L" }
    const hand = { offcuts: [left], boards: 1, taken: [1] }
    stockOf(full, hand).take({ left: 0, right: 800, role: "finish" })
    expect(hand.offcuts).toHaveLength(1)
  })

  it("this room's offcuts are cut before those that another left, though they are longer", () => {
    const own = { board: 1, room: null, of: 1860, from: 0, to: 900, low: 0, high: 189, mark: "2L" }
    const brought = { ...own, board: 7, room: "A1", to: 850, mark: "A1 3L" }
    const stock = stockOf(full, { offcuts: [brought, own], boards: 1, taken: [1] })
    expect(stock.take({ left: 3200, right: 4000, role: "finish" }).source).toBe("2L")
    expect(stock.take({ left: 3200, right: 4000, role: "finish" })).toMatchObject({
      room: "A1",
      source: "A1 3L",
    })
  })

  it("of a mix a piece is cut of the shortest board that opened packs hold; one laid whole is of its length", () => {
    const mixed = {
      ...limits,
      lengths: [
        { length: 1860, perPack: 2 },
        { length: 1200, perPack: 1 },
      ],
    }
    const stock = new Stock({ offcuts: [], boards: 0, taken: [0, 0] }, full, { limits: mixed, named: true })
    expect(stock.take({ left: 0, right: 700, role: "start" })).toMatchObject({
      of: 1200,
      from: 500,
      to: 1200,
    })
    expect(stock.take({ left: 700, right: 2560, role: "whole" })).toMatchObject({ of: 1860 })
    /* The one board of 1,200 in the opened pack is gone. */
    expect(stock.take({ left: 0, right: 800, role: "start" })).toMatchObject({ of: 1860 })
    expect(stock.taken).toEqual([2, 1])
  })
})
