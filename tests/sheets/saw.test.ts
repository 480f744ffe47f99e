import { describe, expect, it } from "vitest"
import { endText, sawSheet } from "../../src/sheets/saw.ts"
import { smallResult } from "../fixtures/small-job.ts"
import { badTables } from "../fixtures/tables.ts"
import { tablesOf } from "./sheets.ts"

/** The rows of the cut lists, without the summary at the head. */
const cutRows = (sheet: ReturnType<typeof sawSheet>) =>
  tablesOf(sheet)
    .slice(1)
    .flatMap((table) => table.rows)

describe("the saw sheet", () => {
  it("lists every piece once under its length, with a box to tick and room for the tape", async () => {
    const result = await smallResult()
    const rows = cutRows(sawSheet(result))
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

  it("names the storey each length is sawn on: below where it does not go up the stair", async () => {
    const upstairs = (carry: number) => async () => {
      const result = await smallResult((job) => ({
        job: { ...job.job, carry: { longest: carry, heaviest: 25 } },
      }))
      const lower = { ...result.house.storeys[0]!, id: "cellar", name: "Cellar" }
      const house = { ...result.house, storeys: [lower, ...result.house.storeys] }
      const groups = cutRows(sawSheet({ ...result, house })).filter((row) => row.as === "group")
      return [...new Set(groups.map((row) => row.cells[3]))]
    }
    const [below] = await upstairs(3300)()
    expect(below).toBe("Below: Cellar")
    const [there] = await upstairs(6000)()
    expect(there).toMatch(/^On: /)
    expect(there).not.toContain("Cellar")
  })

  it("names the pieces that no hand should hold to the blade, and keeps each drawing with its part of the list", async () => {
    const result = await smallResult()
    const listed = (of: typeof result) =>
      JSON.stringify(sawSheet(of)?.blocks.filter(({ kind }) => kind === "list"))
    expect(listed(result)).not.toContain("Shorter than 150 mm")
    const [list] = result.orders.cutLists
    const pieces = list!.pieces.map((piece, index) => (index === 0 ? { ...piece, length: 149 } : piece))
    const short = { ...result, orders: { ...result.orders, cutLists: [{ ...list!, pieces }] } }
    expect(listed(short)).toContain(`Shorter than 150 mm: ${pieces[0]!.mark} (149)`)
    const blocks = sawSheet(result)!.blocks
    blocks.forEach((block, index) => {
      const before = blocks[index - 1]
      const pair = before?.kind === "drawing" && before.withNext === true
      expect(block.kind === "table" && block.withPrevious === true).toBe(pair)
    })
    expect(blocks.some((block) => block.kind === "table" && block.withPrevious)).toBe(true)
  })

  it("sets plan, rule of thumb, spare lengths and mis-cuts survived beside each other, and no money", async () => {
    const result = await smallResult()
    const [summary] = tablesOf(sawSheet(result))
    const [list] = result.orders.cutLists
    expect(summary!.rows).toHaveLength(result.orders.cutLists.length)
    const cells = summary!.rows[0]!.cells
    expect(cells[2]).toBe(String(list!.plan.lengths))
    expect(cells[8]).toBe(String(list!.spares!.survives))
    expect(list!.spares!.survives).toBeGreaterThan(0)
    expect(JSON.stringify(sawSheet(result))).not.toContain("£")
    expect(badTables(sawSheet(result)!)).toEqual([])
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
    ["square", 9.9, "bevel 10°"],
  ] as const)("%s at %d reads %s", (as, setting, text) => {
    expect(endText({ as, setting })).toBe(text)
  })

  it("of a piece that lies flat is a plain mitre", () => {
    expect(endText({ as: "internal-mitre", setting: 45 }, true)).toBe("mitre 45°")
  })
})
