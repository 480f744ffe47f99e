import { describe, expect, it } from "vitest"
import { officeSheets } from "../../src/sheets/office.ts"
import { smallMoney, smallResult } from "../fixtures/small-job.ts"
import { cellsOf, tablesOf } from "./sheets.ts"

const pence = (text = "") => Number(text.replace(/[,.]/g, ""))

describe("the office's sheets", () => {
  it("are for the office alone", async () => {
    const sheets = officeSheets(await smallResult(() => ({ money: smallMoney })), ["saw-kerf"])
    expect(sheets.map((sheet) => sheet.kind)).toEqual(["orders", "price", "workings", "rulebook"])
    expect(sheets.every((sheet) => !sheet.hosted && sheet.audience.join() === "office")).toBe(true)
  })

  it("total each supplier's order to the penny", async () => {
    const [orders] = officeSheets(await smallResult(), [])
    const rows = tablesOf(orders)
      .filter((table) => table.caption.startsWith("To the "))
      .flatMap((table) => table.rows)
    let sum = 0
    for (const { as, cells } of rows) {
      if (as !== "total") sum += pence(cells[5])
      else {
        expect(pence(cells[5])).toBe(sum)
        sum = 0
      }
    }
    expect(rows.filter((row) => row.as === "total")).toHaveLength(2)
  })

  it("show a price whose lines add up", async () => {
    const sheets = officeSheets(await smallResult(() => ({ money: smallMoney })), [])
    const lines = cellsOf(sheets.find((sheet) => sheet.kind === "price"))
    const amount = (start: string) => pence(lines.find(([what]) => what?.startsWith(start))?.[2])
    const parts = ["Materials", "Overhead", "Contingency", "Provisional"].map((each) =>
      each === "Materials" ? pence(lines.find(([what]) => what === each)?.[2]) : amount(each),
    )
    expect(amount("Labour, joiners: 15.0 h at £31.17")).toBe(46755)
    expect(amount("Before VAT")).toBe(46755 + parts.reduce((sum, each) => sum + each, 0))
    expect(amount("With VAT")).toBe(amount("Before VAT") + amount("VAT at 20 %"))
  })

  it("show waste, spares and part packs of each product: 7 packs bought for 16.55 m2 of 19.69", async () => {
    const sheets = officeSheets(await smallResult(() => ({ money: smallMoney })), [])
    const lines = cellsOf(sheets.find((sheet) => sheet.kind === "price"))
    // 7 x 98.15 = 687.05; 3.13624 of 19.68624 m2 over: 109.455
    expect(lines.find(([what]) => what === "Materials, oak board 14")?.slice(1)).toEqual(["109.45", "687.05"])
  })

  it("add up the same by room, trade, stage and rate of VAT", async () => {
    const sheets = officeSheets(await smallResult(() => ({ money: smallMoney })), [])
    const tables = tablesOf(sheets.find((sheet) => sheet.kind === "price")).filter(({ caption }) =>
      caption.startsWith("By "),
    )
    expect(tables.map(({ caption }) => caption)).toEqual([
      "By room",
      "By trade",
      "By stage of the work",
      "By rate of VAT",
    ])
    const totals = tables.map(({ rows }) => rows[rows.length - 1]!.cells.slice(1).join())
    expect(new Set(totals).size).toBe(1)
  })

  it("print an overridden entry with the rulebook's own value and the reason", async () => {
    const override = { id: "saw-kerf", value: 4, reason: "wider blade" }
    const result = await smallResult((job) => ({ job: { ...job.job, overrides: [override] } }))
    const book = officeSheets(result, ["saw-offcut-keep", "saw-kerf"]).find(
      (sheet) => sheet.kind === "rulebook",
    )
    expect(cellsOf(book).map(([id, , value]) => [id, value])).toEqual([
      ["saw-kerf", "4 mm"],
      ["saw-offcut-keep", "600 mm"],
    ])
    expect(cellsOf(book)[0]?.[3]).toBe(
      "common practice. Overridden for this job (the rulebook has 3 mm): wider blade.",
    )
  })

  it("tell how far each room's survey can be trusted", async () => {
    const result = await smallResult()
    const workings = officeSheets(result, []).find((sheet) => sheet.kind === "workings")
    const shapes = cellsOf(workings).map((cells) => [cells[0], cells[6]])
    expect(shapes).toEqual(
      result.house.rooms.map((room) => [
        room.id,
        room.trust.fixed ? "fixed" : "not fixed: one more diagonal",
      ]),
    )
  })
})
