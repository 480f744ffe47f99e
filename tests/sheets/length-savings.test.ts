import { describe, expect, it } from "vitest"
import { lengthSavings } from "../../src/sheets/length-savings.ts"
import { officeSheets } from "../../src/sheets/office.ts"
import { smallResult } from "../fixtures/small-job.ts"
import { badTables } from "../fixtures/tables.ts"

const pence = (text = "") => Number(text.replace(/[,.]/g, "").replace("−", "-"))

describe("what the saw plan saves", () => {
  it("is the rule of thumb less the plan, profile by profile and together", async () => {
    const [block] = lengthSavings(await smallResult())
    if (block?.kind !== "table") throw new Error("no table")
    for (const { cells } of block.rows) expect(pence(cells[5])).toBe(pence(cells[2]) - pence(cells[4]))
    const total = block.rows.find((row) => row.as === "total")!
    for (const column of [2, 4, 5, 6]) {
      const lines = block.rows.filter((row) => row.as !== "total")
      expect(pence(total.cells[column])).toBe(lines.reduce((sum, row) => sum + pence(row.cells[column]), 0))
    }
  })

  it("stands on the office's orders, nowhere else", async () => {
    const result = await smallResult()
    const [orders] = officeSheets(result, [])
    expect(
      orders!.blocks.some((block) => block.kind === "table" && block.caption.startsWith("Lengths:")),
    ).toBe(true)
    expect(badTables(orders!)).toEqual([])
    expect(lengthSavings({ ...result, orders: { ...result.orders, cutLists: [] } })).toEqual([])
  })
})
