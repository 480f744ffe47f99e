import { describe, expect, it } from "vitest"
import { firstNightSheet, noSleeping, noSleepingSheets } from "../../src/sheets/first-night.ts"
import { glanceSheet } from "../../src/sheets/glance.ts"
import { badTables } from "../fixtures/tables.ts"
import { cellsOf } from "./sheets.ts"
import { house, textOf } from "./site.ts"

const room = (id: string) => house.house.rooms.find((each) => each.id === id)!

describe("the first night on paper", () => {
  const sheet = firstNightSheet(house)!

  it("has a box for each condition, goes to room, client and archive", () => {
    expect(cellsOf(sheet).map(([what]) => what!.split(/[ :]/)[0])).toEqual([
      "Doors",
      "Stair",
      "Alarms",
      "Stair",
      "Work",
      "Building",
    ])
    expect(cellsOf(sheet)[1]![0]).toContain("light over D6 closed")
    expect(sheet.audience).toEqual(["trade", "client", "office"])
    expect(badTables(sheet)).toEqual([])
  })

  it("no sleeping is printed for the new rooms and for none below", () => {
    expect(noSleepingSheets(house, room("A1"))).toHaveLength(1)
    expect(textOf(noSleepingSheets(house, room("A1"))[0]!)).toContain("NO SLEEPING HERE")
    expect(noSleeping(house, room("A3"))).toHaveLength(1)
    expect(noSleepingSheets(house, room("B1"))).toEqual([])
    expect(textOf(glanceSheet(house, room("A1")))).toContain("no sleeping before")
    expect(textOf(glanceSheet(house, room("B1")))).not.toContain("no sleeping before")
  })

  it("is none where there is no new storey to sleep in", () => {
    const programme = { ...house.programme, firstNight: null }
    expect(firstNightSheet({ ...house, programme })).toBeNull()
    expect(noSleepingSheets({ ...house, programme }, room("A1"))).toEqual([])
  })
})
