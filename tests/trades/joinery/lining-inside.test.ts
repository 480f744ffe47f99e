import { describe, expect, it } from "vitest"
import { buildUp, liningInside } from "../../../src/trades/joinery/lining-inside.ts"
import { joineryRules } from "../../../src/trades/joinery/rules.ts"
import type { RoomFacts } from "../../../src/trades/trade.ts"
import { houseOf, jobFacts, rulesOf, surveyed } from "../../fixtures/rooms.ts"

function inside(door: Record<string, unknown>, passed: Record<string, RoomFacts> = {}) {
  const house = houseOf({
    doors: [
      {
        id: "D1",
        name: "Door",
        between: ["R1", "R2"],
        lining: "keep",
        lengthsTo: "lining",
        heightsFrom: "finished-floor",
        widths: [768, 771],
        heights: [1984, 1985],
        wall: 100,
        ...door,
      },
    ],
  })
  const room = surveyed({ doors: [{ door: "D1", wall: 1, fromLeft: 500 }] }, house)
  const job = jobFacts({ rooms: [room], house, rules: rulesOf(joineryRules), passed })
  return { inside: liningInside(room.doors[0]!, room, job), job }
}

describe("inside of a lining", () => {
  it("is what was taped between linings, widest and highest", () => {
    expect(inside({}).inside).toEqual({ width: 771, height: 1985 })
  })

  // 844 less two linings of 32 and 12 of packing; 2,054 over the deck less 32, 6 of packing and 19 of floor
  it("takes linings, packing and the new floor off a stud opening taped from the deck", () => {
    const studs = { lining: "new", lengthsTo: "stud", heightsFrom: "deck", widths: [844], heights: [2054] }
    expect(inside(studs, { R1: { floorBuildUp: 19 } }).inside).toEqual({ width: 768, height: 1997 })
  })

  // 1,990 over a floor of 13 is 1,984 over one of 19
  it("takes what the other room passes on, set right for the two floors", () => {
    const passed = {
      R1: { floorBuildUp: 19 },
      R2: { floorBuildUp: 13, linings: { D1: { width: 700, height: 1990 } } },
    }
    expect(inside({}, passed).inside).toEqual({ width: 700, height: 1984 })
  })

  it("knows a floor that is passed on, and what lies there now where none is", () => {
    const { job } = inside({}, { R1: { floorBuildUp: 19 } })
    expect(buildUp("R1", job)).toBe(19)
    expect(buildUp("outside", job)).toBe(0)
  })
})
