import { describe, expect, it } from "vitest"
import { wayOut } from "../../src/programme/way-out.ts"
import { siteOf } from "../fixtures/programme.ts"
import { houseOf, surveyed } from "../fixtures/rooms.ts"

const plain = surveyed()
const door = (id: string, between: [string, string], more = {}) => ({
  id,
  name: id,
  between,
  lining: "keep",
  lengthsTo: "lining",
  heightsFrom: "deck",
  widths: [760],
  heights: [1990],
  wall: 100,
  ...more,
})
const house = houseOf({
  doors: [
    door("D0", ["outside", "H"], { finalExit: true }),
    door("D1", ["L", "B"]),
    door("D2", ["L", "C"]),
    door("D3", ["H", "K"]),
    door("D4", ["outside", "K"]),
    door("D5", ["B", "N"]),
  ],
})
const rooms = (["H", "K", "L", "B", "C", "N"] as const).map((id) => ({ ...plain, id }))
const stairs = [{ id: "S1", from: "ground", to: "ground", fromRoom: "H", toRoom: "L", new: false }] as never
const site = siteOf(rooms, { doors: house.doors, stairs })

describe("the way out of a bedroom", () => {
  it("is walked by the fewest doorways and stairs to the final exit", () => {
    const way = wayOut("B", site)!
    expect(way.rooms).toEqual(["B", "L", "H"])
    expect(way.through.map(({ by, id }) => `${by} ${id}`)).toEqual(["door D1", "stair S1", "door D0"])
  })

  it("has every doorway into its rooms as an opening, and not one behind the bed", () => {
    expect(wayOut("B", site)!.openings.map(({ id }) => id)).toEqual(["D0", "D1", "D2", "D3"])
  })

  it("takes any doorway to the open air where none is a final exit, and is none in a house without one", () => {
    const doors = house.doors.map((each) => ({ ...each, finalExit: false }))
    expect(wayOut("K", { ...site, doors })!.through).toEqual([{ by: "door", id: "D4" }])
    const shut = doors.filter(({ between }) => !between.includes("outside"))
    expect(wayOut("K", { ...site, doors: shut })).toBeNull()
  })
})
