import { describe, expect, it } from "vitest"
import { collectionsSheet } from "../../src/sheets/collections.ts"
import { smallResult } from "../fixtures/small-job.ts"
import { tablesOf } from "./sheets.ts"

const supplier = { supplier: "timber merchant", leadIn: "calendar" as const, collect: true }

describe("what is fetched", () => {
  it("is a list a trip with mass and longest, and no price", async () => {
    const sheet = collectionsSheet(await smallResult(() => ({ suppliers: [supplier] })))
    const tables = tablesOf(sheet)
    expect(tables.map((table) => table.caption)).toEqual([
      "Tue 2 Mar 2027, at the timber merchant: ordered ahead by Fri 26 Feb 2027; about 43 kg, longest 4,400 mm",
    ])
    expect(tables[0]?.rows[0]?.cells.slice(0, 2)).toEqual(["skirting 18 x 145", "5 × 4,400 length"])
    expect([sheet?.hosted, JSON.stringify(sheet).includes("21.60")]).toEqual([true, false])
  })

  it("is no sheet where all is delivered", async () => {
    expect(collectionsSheet(await smallResult())).toBeNull()
  })
})
