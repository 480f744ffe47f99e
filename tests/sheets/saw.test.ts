import { describe, expect, it } from "vitest"
import { endText, sawSheet } from "../../src/sheets/saw.ts"
import { smallResult } from "../fixtures/small-job.ts"
import { rowsOf, tablesOf } from "./sheets.ts"

describe("the saw sheet", () => {
  it("lists every piece once under its length, with a box to tick and room for the tape", async () => {
    const result = await smallResult()
    const rows = rowsOf(sawSheet(result))
    const marks = rows.filter((row) => row.as !== "group").map((row) => row.cells[1])
    expect([...marks].sort()).toEqual(["C2-1-S1", "C2-2-S1", "C2-3-S1", "C2-4-S1"])
    expect(rows.filter((row) => row.as === "group")).toHaveLength(
      result.orders.cutLists[0]?.plan.bars.length ?? 0,
    )
    expect(rows.every((row) => row.cells.slice(6).every((cell) => cell === ""))).toBe(true)
  })

  it("says what fits one length: offcut, saw cuts, ends and pieces make up the bought length", async () => {
    const { orders } = await smallResult()
    const [list] = orders.cutLists
    for (const bar of list?.plan.bars ?? []) {
      const pieces = bar.pieces.map((mark) => list!.pieces.find((piece) => piece.mark === mark)!.length)
      const all = pieces.reduce((sum, length) => sum + length, bar.offcut + bar.kerfs + 2 * bar.endTrim)
      expect(Math.abs(all - bar.length)).toBeLessThan(0.05 * (pieces.length + 1))
    }
  })

  it("sends the saw below where a length does not go up the stair", async () => {
    const [table] = tablesOf(sawSheet(await smallResult()))
    expect(table?.note).toBe("No more than 3,300 goes up the stair: saw these lengths below.")
    const wide = await smallResult((job) => ({ job: { ...job.job, carry: { longest: 5000, heaviest: 25 } } }))
    expect(tablesOf(sawSheet(wide))[0]?.note).toBeUndefined()
  })

  it("is no sheet where nothing is sawn", async () => {
    const result = await smallResult()
    expect(sawSheet({ ...result, orders: { ...result.orders, cutLists: [] } })).toBeNull()
  })
})

describe("an end for the sawyer", () => {
  it.each([
    ["square", 0, "square"],
    ["internal-mitre", 44.8, "internal mitre 45°"],
    ["external-mitre", 43.4, "external mitre 43.5°"],
    ["against-architrave", 0.1, "square to architrave"],
    ["scribed", 0, "scribe"],
  ] as const)("%s at %d reads %s", (as, setting, text) => {
    expect(endText({ as, setting })).toBe(text)
  })
})
