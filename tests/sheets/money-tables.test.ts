import { describe, expect, it } from "vitest"
import { money } from "../../src/kernels/money.ts"
import type { BillLine } from "../../src/orders/bill.ts"
import { priceOf } from "../../src/orders/price.ts"
import {
  moneyTable,
  pennyText,
  roomOfLine,
  roundingRule,
  vatRests,
  vatTable,
  workOfLine,
} from "../../src/sheets/money-tables.ts"
import { generatedPrice } from "../fixtures/generated-prices.ts"
import { smallResult } from "../fixtures/small-job.ts"

const group = (key: string, vat: string, vatAlone: string) => ({
  key,
  net: money(1),
  gross: money(1),
  vat: money(vat),
  vatAlone: money(vatAlone),
})

describe("tables of money", () => {
  it("explain a penny where it shows, and say nothing where none does", () => {
    expect(pennyText([group("hall", "1.00", "1.00")])).toBeNull()
    expect(pennyText([group("hall", "1.00", "1.00"), group("attic", "2.01", "2.00")])).toMatch(
      /£2\.00 for attic/,
    )
    expect(roundingRule).toContain("half a penny up")
  })

  it("put groups in the order asked for, others after them", () => {
    const price = priceOf(generatedPrice(3))
    const table = moneyTable("x", price, {
      label: "Kind",
      keyOf: (line) => line.kind,
      order: ["provisional", "materials"],
    })
    const keys = table.kind === "table" ? table.rows.map((row) => row.cells[0]) : []
    expect(keys.slice(0, 2).sort()).toEqual(
      ["materials", "provisional"].filter((key) => keys.includes(key)).slice(0, 2),
    )
    expect(keys[keys.length - 1]).toBe("Together")
  })

  it("print each rate that is used with its condition and the entry it rests on", () => {
    const price = priceOf(generatedPrice(3))
    const table = vatTable(price)
    const rows = table.kind === "table" ? table.rows : []
    expect(rows).toHaveLength(price.taxes.filter((tax) => !tax.net.isZero()).length)
    expect(table.kind === "table" ? table.note : "").toContain("tax adviser")
    const entries = { 20: "vat-standard", 5: "vat-reduced", 0: "vat-zero" } as Record<number, string>
    const used = price.taxes.filter((tax) => !tax.net.isZero()).map((tax) => entries[tax.percent])
    expect(vatRests(price).sort()).toEqual([...new Set(used)].sort())
  })

  it("name lines by room and by work", async () => {
    const result = await smallResult()
    const line = (given: Partial<BillLine>) =>
      ({ kind: "labour", what: "x", trade: "floors", room: "C2", ...given }) as BillLine
    const named = (given: Partial<BillLine>) => [
      roomOfLine(line(given), result),
      workOfLine(line(given), result),
    ]
    expect(named({})).toEqual(["living room", "Floors"])
    expect(named({ room: null, trade: null })).toEqual(["The whole house", "Hired things and skips"])
    expect(named({ kind: "provisional" })).toEqual(["Provisional sum: x", "Provisional sums"])
    expect(named({ kind: "sum" })).toEqual(["Agreed change: x", "Agreed changes"])
  })
})
