import { describe, expect, it } from "vitest"
import { checksOf, endOfDaySheet, promisesOf, routeText, weekText } from "../../src/sheets/end-of-day.ts"
import { badTables } from "../fixtures/tables.ts"
import { cellsOf } from "./sheets.ts"
import { house, textOf } from "./site.ts"

describe("the end of a day in the demo house", () => {
  const sheet = endOfDaySheet(house)!

  it("who sleeps where, and the way out walked by doorway and stair", () => {
    expect(routeText("B1", house)).toBe("B1 → D5 → B4 First landing → S1 → C1 Hall → D14 → open air")
    expect(textOf(sheet)).toContain("two children")
  })

  it("every doorway into the ways' rooms has its box: five on the landing and the bedrooms, five in the hall", () => {
    const doors = cellsOf(sheet)
      .flat()
      .filter((cell) => /^D\d+$/.test(cell))
      .sort()
    expect(doors).toEqual(["D10", "D12", "D13", "D14", "D5", "D6", "D7", "D8", "D9"])
    expect(badTables(sheet)).toEqual([])
  })

  it.each([
    ["stair", /Stair S1: dry, clear, lit/],
    ["bathroom", /B3 Bathroom: locks/],
    ["alarms", /Alarms bare, all sound: .*B4/],
    ["power and water", /Power on.*Water and heating on/],
    ["tools", /Tools and chargers unplugged/],
    ["rags", /Oily rags out/],
    ["exit", /D14: opens inside without a key/],
    ["screen", /Screen shut: foot of the new stair/],
  ])("%s", (_, words) => {
    expect(checksOf(house).join(" ")).toMatch(words)
  })

  it("what was promised: hours of noise and quiet, screen, breakthrough, keys, parking, skip", () => {
    const told = new Map(promisesOf(house))
    expect([...told.keys()]).toEqual(["Noise", "Dust screen", "Breakthrough", "Keys", "Parking", "Skip"])
    expect(told.get("Noise")).toContain("quiet Mon to Wed 09:00–14:00")
  })

  it("is none in an empty house; days of the week are joined", () => {
    expect(endOfDaySheet({ ...house, house: { ...house.house, occupied: false } })).toBeNull()
    expect(weekText(["fri", "mon", "tue", "wed"])).toBe("Mon to Wed, Fri")
  })
})
