import { describe, expect, it } from "vitest"
import { bySupplier, deliveriesSheet, packsText } from "../../src/sheets/deliveries.ts"
import { smallResult } from "../fixtures/small-job.ts"
import { cellsOf, tablesOf } from "./sheets.ts"

describe("deliveries", () => {
  it("are a table a supplier, with packs to count and the last day to order", async () => {
    const result = await smallResult()
    const sheet = deliveriesSheet(result)
    expect(tablesOf(sheet).map((table) => table.caption)).toEqual([
      "From the flooring merchant",
      "From the timber merchant",
    ])
    // Needed on Monday 1 March; ten days back is Friday 19 February, so ordered by the day before: late on 15 February? No.
    expect(cellsOf(sheet)[0]).toEqual([
      "oak board 14",
      "7 × pack of 8",
      "19.69 m²",
      "Thu 18 Feb 2027",
      "Mon 1 Mar 2027",
      "",
      "",
    ])
  })

  it("say what does not go up the stair", async () => {
    const result = await smallResult()
    const [, skirting] = cellsOf(deliveriesSheet(result))
    expect(skirting?.[0]).toBe("skirting 18 x 145 (4,400 long: cut below, or to no more than 3,300)")
  })

  it("carry no price", async () => {
    const result = await smallResult()
    const words = JSON.stringify(deliveriesSheet(result))
    for (const line of result.orders.lines) expect(words).not.toContain(line.total.toFixed(2))
    expect(words).not.toContain("£")
  })

  it("are no sheet at all where nothing is bought", async () => {
    const result = await smallResult()
    expect(deliveriesSheet({ ...result, orders: { ...result.orders, lines: [] } })).toBeNull()
  })

  it("keep lines of one supplier together, whatever their order", async () => {
    const { orders } = await smallResult()
    const [a, b] = orders.lines
    const groups = bySupplier([a!, b!, a!]).map(({ supplier, lines }) => [supplier, lines.length])
    expect(groups).toEqual([
      ["flooring merchant", 2],
      ["timber merchant", 1],
    ])
  })

  it("write packs of several sizes as one sum", async () => {
    const { orders } = await smallResult()
    const [line] = orders.lines
    const price = line!.total
    const packs = [
      { size: "5 l tin", count: 2, price },
      { size: "2.5 l tin", count: 1, price },
    ]
    expect(packsText({ ...line!, packs })).toBe("2 × 5 l tin + 1 × 2.5 l tin")
  })
})
