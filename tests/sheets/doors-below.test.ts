import { describe, expect, it } from "vitest"
import { doorsBelowSheet } from "../../src/sheets/doors-below.ts"
import { badTables } from "../fixtures/tables.ts"
import { tablesOf } from "./sheets.ts"
import { house } from "./site.ts"

describe("doors below on paper", () => {
  const sheet = doorsBelowSheet(house)!
  const [days, off] = tablesOf(sheet)

  it("each door of the rooms lived in once, opened and hung on one day, in order of days", () => {
    expect(days!.rows.map(({ cells }) => cells[1]).sort()).toEqual(["D10", "D13", "D5", "D6", "D9"])
    for (const { cells } of days!.rows) expect(cells[3]! < cells[4]!, cells.join(" ")).toBe(true)
  })

  it("has lines for leaves taken off to paint, back by evening", () => {
    expect(off!.caption).toContain("back by evening")
    expect(badTables(sheet)).toEqual([])
  })

  it("is none in an empty house", () => {
    expect(doorsBelowSheet({ ...house, house: { ...house.house, occupied: false } })).toBeNull()
  })
})
