import { beforeAll, describe, expect, it } from "vitest"
import { allSheets } from "../../src/sheets/all-sheets.ts"
import type { JobResult } from "../../src/sheets/job-result.ts"
import { type Pack, packsOf } from "../../src/sheets/packs.ts"
import { smallMoney, smallResult } from "../fixtures/small-job.ts"

let result: JobResult
let packs: Pack[]
const pack = (id: string) => packs.find((each) => each.id === id)?.sheets ?? []

beforeAll(async () => {
  result = await smallResult(() => ({ money: smallMoney }))
  packs = packsOf(result, allSheets(result))
})

describe("packs", () => {
  it("are one a room, one a trade with sheets, the blank forms, the client's, the job's and the archive", () => {
    expect(packs.map((each) => each.id)).toEqual([
      "room-c1",
      "room-c2",
      "trade-floors",
      "trade-joinery",
      "survey-forms",
      "day-by-day",
      "client",
      "job",
      "archive",
    ])
    expect(packs.filter((each) => each.bound).map((each) => each.id)).toEqual(["job", "archive"])
  })

  it("give a room its own sheets and no other's", () => {
    for (const room of ["C1", "C2"])
      expect(pack(`room-${room.toLowerCase()}`).every((sheet) => sheet.room === room)).toBe(true)
  })

  it("give the joiner the saw sheet with his own", () => {
    expect(pack("trade-joinery").map((sheet) => sheet.kind)).toContain("saw")
    expect(pack("trade-floors").map((sheet) => sheet.kind)).not.toContain("saw")
  })

  it("keep every sheet not meant for the trades out of rooms, trades and the bound job", () => {
    for (const { id, sheets } of packs.filter((each) => /^(room|trade|job)/.test(each.id)))
      expect(
        sheets.filter((sheet) => !sheet.audience.includes("trade")).map((sheet) => sheet.number),
        id,
      ).toEqual([])
    expect(pack("client").every((sheet) => sheet.audience.includes("client"))).toBe(true)
  })

  it("have the large sheets folded out, under their own numbers, where the job asks for them", async () => {
    const asked = await smallResult((job) => ({ job: { ...job.job, foldOuts: true } }))
    const own = packsOf(asked, allSheets(asked)).find(({ id }) => id === "fold-outs")!
    expect(own.bound).toBe(false)
    expect(own.sheets.map(({ number, orientation }) => [number, orientation])).toEqual([
      ["J-55", "fold-out"],
      ["J-60", "fold-out"],
    ])
  })

  it("keep everything in the archive, once", () => {
    const numbers = pack("archive").map((sheet) => sheet.number)
    expect(new Set(numbers).size).toBe(numbers.length)
    for (const { sheets } of packs) for (const sheet of sheets) expect(numbers).toContain(sheet.number)
  })
})
