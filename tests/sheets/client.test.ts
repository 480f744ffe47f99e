import { describe, expect, it } from "vitest"
import { clientSheets } from "../../src/sheets/client.ts"
import { smallMoney, smallResult } from "../fixtures/small-job.ts"

const kindsFor = async (money: typeof smallMoney | null) =>
  clientSheets(await smallResult(() => ({ money }))).map((sheet) => sheet.kind)

describe("the client's sheets", () => {
  it("are never published and never handed to a trade", async () => {
    const sheets = clientSheets(await smallResult(() => ({ money: smallMoney })))
    expect(sheets.every((sheet) => !sheet.hosted && !sheet.audience.includes("trade"))).toBe(true)
  })

  it("stand in the order they are read; price, choices and changes only where money is written", async () => {
    expect(await kindsFor(smallMoney)).toEqual([
      "client-cover",
      "client-schedule",
      "client-rooms",
      "client-choices",
      "client-terms",
      "client-price",
      "client-variations",
      "client-handover",
      "handover-record",
      "client-aftercare",
    ])
    expect(await kindsFor(null)).toEqual([
      "client-cover",
      "client-schedule",
      "client-rooms",
      "client-terms",
      "client-handover",
      "handover-record",
      "client-aftercare",
    ])
  })
})
