import { describe, expect, it } from "vitest"
import { run, setDoor } from "../run.ts"

describe("the door schedule", () => {
  it("has a row for every doorway, with minimum, what we hang and why apart, and no blank measure", async () => {
    const { across, job } = run({ D5: { hang: "new" } }, setDoor("D7", { leafNow: "flush, 35 mm" }))
    const { sheets } = await across()
    const tables = sheets.find((sheet) => sheet.kind === "door-schedule")!.blocks
    const [reasons, measures] = tables.filter((block) => block.kind === "table")
    expect(reasons!.rows).toHaveLength(job.house.doors.length)
    for (const row of [...reasons!.rows, ...measures!.rows]) {
      expect(row.cells.every((cell) => cell.trim() !== "")).toBe(true)
    }
    const bathroom = measures!.rows.find((row) => row.cells[0] === "D7")!.cells
    expect(bathroom).toContain("stays: flush, 35 mm")
  })

  it("adds up ironmongery over rooms", async () => {
    const { across } = run({ D5: { hang: "new" }, D9: { hang: "new" } })
    const { sheets } = await across()
    const text = JSON.stringify(sheets.find((sheet) => sheet.kind === "door-schedule")!.blocks)
    expect(text).toMatch(/Hinge 100 mm, grade 11","6","nr/)
  })
})
