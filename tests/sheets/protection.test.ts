import { describe, expect, it } from "vitest"
import { coveredIn, protectionSheet, stairArea } from "../../src/sheets/protection.ts"
import { badTables } from "../fixtures/tables.ts"
import { house, textOf } from "./site.ts"

describe("protection", () => {
  it("a stair's treads and risers by hand: (13 × 200.8 + 12 × 235) × 840 = 4.56 m2", () => {
    const [lower] = house.house.stairs
    expect(stairArea(lower!)).toBeCloseTo(((13 * 200.8 + 12 * 235) * 840) / 1e6, 6)
    expect(stairArea(lower!)).toBeCloseTo(4.56, 2)
  })

  it("floors new and old, stairs, leaves and sanitaryware, each on and off", () => {
    const covered = coveredIn(house)
    const what = covered.map((each) => each.what).join("; ")
    for (const word of ["new floor", "floor that stays", "treads", "leaf", "sanitaryware: shower, basin, WC"])
      expect(what).toContain(word)
    for (const { on, off } of covered) expect(on && off).toBeTruthy()
  })

  it("tape goes to itself, never to wood; rooms are cleaned down", () => {
    const sheet = protectionSheet(house)!
    expect(textOf(sheet)).toMatch(/Tape the covering to itself, never to wood/)
    expect(textOf(sheet)).toContain("Clean-down")
    expect(badTables(sheet)).toEqual([])
  })
})
