import { describe, expect, it } from "vitest"
import { stairSheet } from "../../../../src/trades/joinery/stairs/sheet.ts"
import { stairsOf } from "../../../../src/trades/joinery/stairs/stair.ts"
import { badTables } from "../../../fixtures/tables.ts"
import { joineryTask } from "../task.ts"

describe("stair sheet", () => {
  const { job } = joineryTask({}, { passed: { R1: { floorBuildUp: 19 }, B4: { floorBuildUp: 12 } } })
  const [seen] = stairsOf(job, [])
  const sheet = stairSheet({ seen: seen!, pieces: [], rules: job.rules, cautions: [] })
  const table = (caption: string) =>
    sheet.blocks.flatMap((block) => (block.kind === "table" && block.caption === caption ? block.rows : []))

  it("gives every rise before and after finishes, and why the first and last change", () => {
    // 13 rises in two columns of 7 and 6, each with number, before, finished and two boxes
    const rows = table("Every rise before and after finishes, from the bottom")
    expect(rows).toHaveLength(7)
    expect(rows[0]!.cells).toEqual(["1", "205.0", "193.0", "", "", "8", "205.0", "205.0", "", ""])
    expect(rows[5]!.cells.slice(5, 8)).toEqual(["13", "205.0", "224.0"])
    expect(rows[6]!.cells.slice(5)).toEqual(["", "", "", "", ""])
    const block = sheet.blocks.find((each) => each.kind === "table" && each.caption.startsWith("Every rise"))
    expect(block?.kind === "table" && block.note).toBe(
      "The first rise: less 12 for the floor. The last rise: plus 19 for the floor.",
    )
    expect(badTables(sheet)).toEqual([])
  })

  it("asks first where a figure lies outside guidance, and stops at the open edge", () => {
    const warning = sheet.blocks.find((block) => block.kind === "warning")
    expect(warning?.kind === "warning" && warning.caption).toBe("Ask building control before going on")
    const checks = sheet.blocks.find((block) => block.kind === "checks")
    expect(checks?.kind === "checks" && checks.items[0]!.text).toContain("2,050 mm")
  })
})
