import { describe, expect, it } from "vitest"
import { datumText } from "../../src/trades/datum.ts"
import { finishedFloor } from "../../src/trades/finished-floor.ts"
import { houseOf, surveyed } from "../fixtures/rooms.ts"

const house = houseOf({ storeys: [{ id: "ground", name: "Ground", deck: 0, finishNow: 12, base: "timber" }] })
const room = (heightsFrom: string) =>
  surveyed(
    { measured: { on: "2027-01-10", by: "foreman", lengthsTo: "plaster", heightsFrom, tape: 3 } },
    house,
  )

describe("the finished floor over a room's datum", () => {
  // Carpet of 12 comes out, oak and underlay of 19 go in.
  it.each([
    ["deck", 19],
    ["old-floor", 7],
    ["finished-floor", 0],
  ])("taped from the %s: %d", (from, value) => {
    expect(finishedFloor({ room: room(from), facts: { floorBuildUp: 19 } })).toBe(value)
  })

  it("where no floor is passed on, what lies there now", () => {
    expect(finishedFloor({ room: room("deck"), facts: {} })).toBe(12)
    expect(finishedFloor({ room: room("old-floor"), facts: {} })).toBe(0)
  })

  it("every sheet can print its datum in words", () => {
    expect(datumText(room("old-floor"))).toBe(
      "Heights from the floor as it was. Lengths to plaster. Millimetres.",
    )
  })
})
