import { describe, expect, it } from "vitest"
import { registerSheet } from "../../src/sheets/register.ts"
import { eachProduct, liquidProduct } from "../fixtures/products.ts"
import { smallResult } from "../fixtures/small-job.ts"
import { rowsOf, tablesOf } from "./sheets.ts"

describe("the register", () => {
  it("has a box and a place for every paper, and is for the office alone", async () => {
    const sheet = registerSheet(await smallResult())
    for (const { cells } of rowsOf(sheet)) expect(cells.slice(1)).toEqual(["", "", ""])
    expect([sheet.audience, sheet.hosted]).toEqual([["office"], false])
    const words = JSON.stringify(sheet)
    for (const paper of [
      "Construction-phase plan",
      "Asbestos survey",
      "completion certificate",
      "Waste carrier",
      "Handover record",
    ])
      expect(words).toContain(paper)
    expect(words).not.toContain("Electrical installation certificate")
  })

  it("asks for the data sheet of each paint, oil and glue, and a note of each delivery", async () => {
    const result = await smallResult()
    const [line] = result.orders.lines
    const glue = { ...eachProduct, name: "Grab adhesive" }
    const lines = [
      { ...line!, product: liquidProduct },
      { ...line!, product: glue },
      { ...line!, product: eachProduct },
    ]
    const tables = tablesOf(registerSheet({ ...result, orders: { ...result.orders, lines } }))
    const of = (start: string) =>
      tables.find((table) => table.caption.startsWith(start))?.rows.map((row) => row.cells[0])
    expect(of("Safety data sheets")).toEqual(["Matt emulsion", "Grab adhesive"])
    expect(of("Delivery notes")).toEqual(["Flooring merchant: 1 note", "Timber merchant: 1 note"])
  })
})
