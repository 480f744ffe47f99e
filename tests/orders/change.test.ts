import { describe, expect, it } from "vitest"
import { sumOf } from "../../src/kernels/money.ts"
import { orderChanges, priceChange } from "../../src/orders/change.ts"
import { priceOf } from "../../src/orders/price.ts"
import { generatedPrice } from "../fixtures/generated-prices.ts"
import { smallResult } from "../fixtures/small-job.ts"

describe("what a variation does to a price", () => {
  it("adds up: added and left out, costs and overhead, net and tax, and both are signed as they should be", () => {
    for (let seed = 0; seed < 60; seed++) {
      const task = generatedPrice(seed)
      const before = priceOf(task)
      const after = priceOf({ ...task, lines: task.lines.slice(seed % 3), sums: [] })
      const change = priceChange(before, after)
      expect(change.added.plus(change.leftOut).equals(change.net)).toBe(true)
      expect(
        sumOf(change.costs.map((each) => each.cost))
          .plus(change.overhead)
          .equals(change.net),
      ).toBe(true)
      expect(before.gross.plus(change.gross).equals(after.gross)).toBe(true)
      expect(change.net.plus(change.vat).equals(change.gross)).toBe(true)
    }
  })

  it("is all left out where nothing is added, and nothing where nothing changes", () => {
    const task = { ...generatedPrice(4), sums: [] }
    const before = priceOf(task)
    const fewer = priceChange(before, priceOf({ ...task, lines: task.lines.slice(1) }))
    expect(fewer.added.isZero()).toBe(true)
    expect(fewer.leftOut.equals(fewer.net)).toBe(true)
    expect(fewer.costs).toHaveLength(1)
    expect(priceChange(before, before).costs).toEqual([])
  })

  it("keeps the costs of one room with its room", () => {
    const task = generatedPrice(4)
    const [line, ...others] = task.lines
    const uses = [{ trade: "floors", room: "A1", net: 1, gross: 1, stage: null }]
    const with1 = priceOf({ ...task, lines: [{ ...line!, uses }, ...others] })
    const [cost] = priceChange(with1, priceOf({ ...task, lines: others })).costs
    expect([cost?.room, cost?.cost.toFixed(2)]).toEqual(["A1", line!.total.negated().toFixed(2)])
  })
})

describe("what a variation does to orders", () => {
  it("is named where packs or the day to order differ, where a line is new and where it falls away", async () => {
    const { lines } = (await smallResult()).orders
    const [board, skirting] = lines
    expect(orderChanges(lines, lines)).toEqual([])
    const later = { ...board!, orderBy: "2027-02-17" }
    expect(orderChanges(lines, [later, skirting!]).map((each) => each.line.product.id)).toEqual([
      board!.product.id,
    ])
    const gone = orderChanges(lines, [board!])
    expect(gone.map(({ was, now, after }) => [was > 0, now, after])).toEqual([[true, 0, null]])
    expect(orderChanges([board!], lines).map(({ was, before }) => [was, before])).toEqual([[0, null]])
  })
})
