import { describe, expect, it } from "vitest"
import { joineryAcross } from "../../../src/trades/joinery/across.ts"
import { joineryWork } from "../../../src/trades/joinery/work.ts"
import { badTables } from "../../fixtures/tables.ts"
import { joineryTask } from "./task.ts"

describe("stairs of the house", () => {
  const task = joineryTask(
    {
      stairs: [
        { stair: "S2", onTreads: 12, parts: [{ what: "handrail", product: "plank", lengths: [2100] }] },
      ],
    },
    { passed: { R1: { floorBuildUp: 19 }, B4: { floorBuildUp: 12 } } },
  )

  it("have a sheet each, with the pieces of their parts", async () => {
    const { sheets, work } = await joineryAcross(task.job, [{ room: task.room, work: joineryWork(task) }])
    expect(sheets.map((sheet) => [sheet.kind, sheet.part, sheet.hosted])).toEqual([["stair", "S2", true]])
    expect(sheets.flatMap(badTables)).toEqual([])
    const table = sheets[0]!.blocks.find(
      (block) => block.kind === "table" && block.caption === "Parts of the stair",
    )
    expect(table?.kind === "table" && table.rows.map((row) => row.cells[0])).toEqual(["R1-S2-H1"])
    // first 205 + 12 - 12, last 205 + 19 - 12
    expect(work.results.stairs).toMatchObject({ S2: { after: [205, ...Array(11).fill(205), 212] } })
  })
})
