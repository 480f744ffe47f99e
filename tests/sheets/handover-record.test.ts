import { describe, expect, it } from "vitest"
import { handoverRecord } from "../../src/sheets/handover-record.ts"
import { eachProduct, liquidProduct } from "../fixtures/products.ts"
import { smallResult } from "../fixtures/small-job.ts"
import { cellsOf } from "./sheets.ts"

describe("the handover record", () => {
  it("lists what stays in sight with colour and rooms, and room for batch and spares; no screws", async () => {
    const result = await smallResult()
    const [line] = result.orders.lines
    const lines = [line!, { ...line!, product: liquidProduct }, { ...line!, product: eachProduct }]
    const rows = cellsOf(handoverRecord({ ...result, orders: { ...result.orders, lines } }))
    expect(rows).toEqual([
      ["oak board 14", "–", "C2", "", "", ""],
      ["Matt emulsion", "white", "C2", "", "", ""],
    ])
  })

  it("is none where nothing was bought", async () => {
    const result = await smallResult()
    expect(handoverRecord({ ...result, orders: { ...result.orders, lines: [] } })).toBeNull()
  })
})
