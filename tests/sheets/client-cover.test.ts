import { describe, expect, it } from "vitest"
import { coverSheet } from "../../src/sheets/client-cover.ts"
import { moneyOf } from "../fixtures/programme.ts"
import { smallMoney, smallResult } from "../fixtures/small-job.ts"
import { tablesOf } from "./sheets.ts"

describe("the cover", () => {
  it("asks for everything in order of its day: room and insurer before the start, choices, payments, the walk at the end", async () => {
    const money = moneyOf({
      ...smallMoney,
      payments: { within: 7, stages: [{ what: "all done", percent: 100, at: "finish" }] },
    })
    const [asked] = tablesOf(coverSheet(await smallResult(() => ({ money })), []))
    const rows = asked!.rows.map((row) => row.cells)
    expect(rows.map((cells) => [cells[0], cells[2]])).toEqual([
      ["Fri 26 Feb 2027", "J-75"],
      ["Fri 26 Feb 2027", "J-74"],
      ["Wed 3 Mar 2027", "J-78"],
      ["Wed 10 Mar 2027", "J-76"],
      ["Fri 12 Mar 2027", "J-71"],
    ])
  })

  it("lists the sheets of the pack with what each answers, and no price where none is written", async () => {
    const result = await smallResult(() => ({ money: null }))
    const other = { ...coverSheet(result, []), kind: "client-terms", title: "Terms", purpose: "What holds." }
    const [, contents] = tablesOf(coverSheet(result, [other]))
    expect(contents!.rows.map((row) => row.cells)).toEqual([["J-75", "Terms", "What holds."]])
    expect(JSON.stringify(coverSheet(result, []))).not.toContain("£")
  })
})
