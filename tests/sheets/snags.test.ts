import { describe, expect, it } from "vitest"
import { snagSheet } from "../../src/sheets/snags.ts"
import { badTables } from "../fixtures/tables.ts"
import { house, textOf } from "./site.ts"

/** Looked at by daylight from 2 m with wall lights off: NHBC Standards 9.1.10, Paint finishes, as of 2 January 2024. */
const VIEW = { paint: 2000, ware: 500 }

describe("a snag sheet", () => {
  const sheet = snagSheet(house, house.house.rooms[0]!)

  it("says from where and in what light, as published", () => {
    expect(house.rules.value("snag-view")).toBe(VIEW.paint)
    expect(house.rules.value("snag-view-ware")).toBe(VIEW.ware)
    expect(textOf(sheet)).toMatch(/by daylight, standing 2 m away/)
    expect(textOf(sheet)).toMatch(/wall lights off/)
  })

  it("has blank lines with wall, trade, day and a box", () => {
    expect(badTables(sheet)).toEqual([])
    expect(textOf(sheet)).toContain("Re-checked")
  })
})
