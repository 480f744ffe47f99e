import { beforeAll, describe, expect, it } from "vitest"
import { allSheets, usedRules } from "../../src/sheets/all-sheets.ts"
import type { JobResult } from "../../src/sheets/job-result.ts"
import type { Sheet } from "../../src/sheets/numbers.ts"
import { smallMoney, smallResult } from "../fixtures/small-job.ts"
import { badTables } from "../fixtures/tables.ts"

let result: JobResult
let sheets: Sheet[]

beforeAll(async () => {
  result = await smallResult((job) => ({ money: smallMoney, job: { ...job.job, client: "Secret owners" } }))
  sheets = allSheets(result)
})

describe("the sheets of a job", () => {
  it("are bound job first, then room by room, then client and office", () => {
    const place = ({ room, audience }: Sheet) =>
      room ?? (audience.includes("trade") ? "job" : audience.includes("client") ? "client" : "office")
    const places = sheets.map(place).filter((each, index, all) => each !== all[index - 1])
    expect(places).toEqual(["job", "C1", "C2", "client", "office"])
  })

  it("have numbers of their own", () => {
    expect(new Set(sheets.map((sheet) => sheet.path)).size).toBe(sheets.length)
  })

  it("have tables whose rows fit their columns and leave the pencil's boxes free", () => {
    expect(sheets.flatMap(badTables)).toEqual([])
  })

  it("that are published hold no money and no client", () => {
    const hosted = sheets.filter((sheet) => sheet.hosted)
    expect(hosted.length).toBeGreaterThan(5)
    const amounts = result.orders.lines.map((line) => line.total.toFixed(2))
    expect(amounts.length).toBeGreaterThan(0)
    for (const sheet of hosted) {
      const words = JSON.stringify(sheet)
      for (const secret of ["£", "Secret owners", "31.17", "417.33", "21.60", "34.90", ...amounts])
        expect(words.includes(secret), `${sheet.number}: ${secret}`).toBe(false)
    }
    const inside = [
      "orders",
      "price",
      "workings",
      "rulebook",
      "client-schedule",
      "client-choices",
      "client-price",
    ]
    expect(hosted.map((sheet) => sheet.kind).filter((kind) => inside.includes(kind))).toEqual([])
  })

  it("name each rulebook entry once at their foot, and the office's list names all of them", () => {
    for (const { number, rests } of sheets) expect(rests, number).toEqual([...new Set(rests)].sort())
    const list = sheets.find((sheet) => sheet.kind === "rulebook")?.blocks[0]
    const listed = list?.kind === "table" ? list.rows.map((row) => row.cells[0]) : []
    expect(listed).toEqual(usedRules(result, sheets))
    expect(listed).toContain("small-out-rate")
  })
})
