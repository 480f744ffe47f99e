import { describe, expect, it } from "vitest"
import { run } from "./run.ts"

describe("sheets", () => {
  it("are one for each room with doors, and schedule, escape route and record for the house", async () => {
    const { sheets, across } = run({ D1: { hang: "new" }, D5: { hang: "new" } })
    expect(sheets.map((sheet) => [sheet.kind, sheet.room])).toEqual([
      ["doors", "C1"],
      ["doors", "C2"],
      ["doors", "B1"],
      ["doors", "B3"],
      ["doors", "A1"],
      ["doors", "A3"],
    ])
    const house = await across()
    expect(house.sheets.map((sheet) => sheet.kind)).toEqual(["escape-route", "door-schedule", "door-record"])
    const rows = house.work.results.doorSchedule as Record<string, unknown>[]
    expect(rows.map((row) => row.door)).toEqual(["D14", "D9", "D5", "D7", "D1", "D3", "D13"])
    expect(new Set(rows.map((row) => Object.keys(row).join())).size).toBe(1)
  })

  it("give every table row as many cells as it has columns", async () => {
    const { sheets, across } = run({
      D1: { hang: "new" },
      D5: { hang: "new", closer: true },
      D13: { hang: "new" },
    })
    for (const sheet of [...sheets, ...(await across()).sheets]) {
      for (const block of sheet.blocks) {
        if (block.kind !== "table") continue
        for (const row of block.rows)
          expect([block.caption, row.cells.length]).toEqual([block.caption, block.columns.length])
      }
    }
  })

  it("rest only on entries the rulebook has, and the same job gives the same sheets", () => {
    const work = { D1: { hang: "new" } }
    const first = run(work)
    for (const sheet of first.sheets)
      for (const id of sheet.rests) expect(first.job.rules.entry(id).id).toBe(id)
    expect(run(work).sheets).toEqual(first.sheets)
  })
})
