import { describe, expect, it } from "vitest"
import { run } from "../run.ts"

const record = async (work: Parameters<typeof run>[0]) =>
  (await run(work).across()).sheets.find((sheet) => sheet.kind === "door-record")

describe("the record of fire-resisting doors", () => {
  it("has a row for each fire leaf hung, pass limits, boxes to write in, and claims nothing", async () => {
    const sheet = (await record({ D5: { hang: "new" }, D3: { hang: "new", leaf: "plain-686" } }))!
    const [labels, gaps] = sheet.blocks.filter((block) => block.kind === "table")
    expect(labels!.rows.map((row) => row.cells[0])).toEqual(["D5"])
    expect(labels!.columns.filter((column) => column.as === "write")).toHaveLength(3)
    // BS 8214:2016 as quoted by a door inspector: 2 to 4, at each of three points of four sides.
    expect(gaps!.rows.map((row) => row.cells.slice(0, 3))).toEqual([
      ["D5", "Hinge side", "2 to 4"],
      ["D5", "Lock side", "2 to 4"],
      ["D5", "Head", "2 to 4"],
      ["D5", "Under the foot", "5 to 10"],
    ])
    expect(gaps!.columns.filter((column) => column.as === "write")).toHaveLength(3)
    expect(JSON.stringify(sheet)).not.toMatch(/complies|compliant/)
    expect(sheet.audience).toEqual(["office"])
  })

  it("is left out where no fire-resisting leaf is hung", async () => {
    expect(await record({ D3: { hang: "new", leaf: "plain-686" } })).toBeUndefined()
  })
})
