import { describe, expect, it } from "vitest"
import { joinerySheets } from "../../../src/trades/joinery/sheet.ts"
import { joineryWork } from "../../../src/trades/joinery/work.ts"
import { badTables } from "../../fixtures/tables.ts"
import { joineryTask } from "./task.ts"

describe("joinery sheet", () => {
  const task = joineryTask({ threshold: [{ door: "D1", profile: "ramp" }], sawn: ["R1-1-S1"] })
  const [sheet] = joinerySheets(task, joineryWork(task))

  it("shows pieces beside the walls, linings cut at the foot, thresholds, finish and checks", () => {
    expect(sheet).toMatchObject({ kind: "joinery", room: "R1", hosted: true })
    const captions = sheet!.blocks.flatMap((block) => ("caption" in block ? [block.caption] : []))
    expect(captions).toContain("Pieces by wall")
    expect(captions).toContain("Linings that stay: cut at the foot before the floor is laid")
    expect(captions).toContain("Threshold bars")
    expect(sheet!.blocks.filter((block) => block.kind === "drawing").length).toBeGreaterThan(0)
    expect(sheet!.blocks.some((block) => block.kind === "cautions")).toBe(true)
    expect(badTables(sheet!)).toEqual([])
  })

  it("says what covers the floor's gap, and by how much", () => {
    const figures = sheet!.blocks.find((block) => block.kind === "figures")
    expect(figures).toMatchObject({
      items: expect.arrayContaining([expect.objectContaining({ value: "6" })]),
    })
  })

  it("keeps a piece on the room's sheet when it is sawn", () => {
    const table = sheet!.blocks.find((block) => block.kind === "table" && block.caption === "Pieces by wall")
    expect(table?.kind === "table" && table.rows.some((row) => row.cells[0] === "R1-1-S1")).toBe(true)
  })

  it("is not made where nothing is fixed", () => {
    const none = joineryTask(
      { skirting: false, architrave: false },
      { passed: { R1: { floorBuildUp: 12, floorFinish: "carpet" } } },
    )
    expect(joinerySheets(none, joineryWork(none))).toEqual([])
  })
})
