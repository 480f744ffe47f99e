import { describe, expect, it } from "vitest"
import { variation } from "../../src/intake/schema/variations.ts"
import { paymentsSheet, priceSheet } from "../../src/sheets/client-price.ts"
import { moneyOf } from "../fixtures/programme.ts"
import { smallMoney, smallResult } from "../fixtures/small-job.ts"
import { cellsOf, tablesOf } from "./sheets.ts"

const pence = (text = "") => (text.startsWith("−") ? -1 : 1) * Number(text.replace(/[£,.−–]/g, ""))
const stages = [
  { what: "start", percent: 33.3, at: "start" },
  { what: "end", percent: 66.7, at: "finish" },
]
const withPayments = moneyOf({
  ...smallMoney,
  payments: { within: 7, stages },
  retention: { percent: 2.5, months: 6 },
})

describe("the client's price", () => {
  it("adds up by room and by kind of work to the same total, allowances by name", async () => {
    const [sheet] = priceSheet(await smallResult(() => ({ money: smallMoney })))
    const tables = tablesOf(sheet)
    const totals = tables.slice(0, 2).map(({ rows }) => {
      const [total, ...lines] = rows.map((row) => row.cells).reverse()
      for (const column of [1, 2, 3])
        expect(lines.reduce((sum, cells) => sum + pence(cells[column]), 0)).toBe(pence(total?.[column]))
      return total?.slice(1)
    })
    expect(totals[0]).toEqual(totals[1])
    expect(tables[0]!.rows.map((row) => row.cells[0])).toEqual([
      "living room",
      "Provisional sum: plaster made good",
      "Together",
    ])
    expect(sheet?.rests).toEqual(["vat-standard"])
  })

  it("prints the condition that makes the rate so, and defers to an adviser", async () => {
    const words = JSON.stringify(priceSheet(await smallResult(() => ({ money: smallMoney }))))
    expect(words).toContain("ordinary work")
    expect(words).toContain("ask a tax adviser")
  })
})

describe("payments", () => {
  it("add up to the price as it stands, agreed changes with it", async () => {
    const change = variation.parse({
      id: "V1",
      on: "2027-02-01",
      asked: "client",
      what: "shelf",
      accepted: "2027-02-02",
      sums: [{ what: "shelf", amount: "123.45" }],
    })
    const result = await smallResult(() => ({ money: withPayments, variations: [change] }))
    const [sheet] = paymentsSheet(result)
    const [total, ...lines] = cellsOf(sheet).reverse()
    expect(lines.reduce((sum, cells) => sum + pence(cells[5]), 0)).toBe(pence(total?.[5]))
    expect(pence(total?.[5])).toBe(pence(result.price!.gross.toFixed(2)))
    // 123.45 and VAT of 24.69
    expect(lines[0]?.[5]).toBe("148.14")
  })

  it("are no sheet where none were agreed or nothing is priced", async () => {
    expect(paymentsSheet(await smallResult(() => ({ money: smallMoney })))).toEqual([])
    expect(paymentsSheet(await smallResult())).not.toBeNull()
    expect(priceSheet(await smallResult(() => ({ money: null })))).toEqual([])
  })
})
