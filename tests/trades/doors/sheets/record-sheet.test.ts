import { describe, expect, it } from "vitest"
import { run } from "../run.ts"

const record = async (work: Parameters<typeof run>[0]) =>
  (await run(work).across()).sheets.find((sheet) => sheet.kind === "door-record")

describe("the record of fire-resisting doors", () => {
  it("has a row for each fire leaf hung, pass limits, boxes to write in, and claims nothing", async () => {
    const sheet = (await record({ D5: { hang: "new" }, D3: { hang: "new", leaf: "plain-686" } }))!
    const table = sheet.blocks.find((block) => block.kind === "table")!
    expect(table.rows.map((row) => row.cells[0])).toEqual(["D5"])
    expect(table.rows[0]!.cells[1]).toBe("2 to 4")
    expect(table.columns.filter((column) => column.as === "write").length).toBeGreaterThanOrEqual(7)
    expect(JSON.stringify(sheet)).not.toMatch(/complies|compliant/)
    expect(sheet.audience).toEqual(["office"])
  })

  it("is left out where no fire-resisting leaf is hung", async () => {
    expect(await record({ D3: { hang: "new", leaf: "plain-686" } })).toBeUndefined()
  })
})
