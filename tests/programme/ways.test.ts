import { describe, expect, it } from "vitest"
import type { Site } from "../../src/programme/programme.ts"
import { waysOf } from "../../src/programme/ways.ts"
import { houseOf, surveyed } from "../fixtures/rooms.ts"

const plain = surveyed()
const storey = (id: string, deck: number) => ({ ...plain.storey, id, deck })
const doorTo = (id: string, a: string, b: string) => ({
  ...houseOf({
    doors: [
      {
        id,
        name: id,
        between: [a, b],
        lining: "keep",
        lengthsTo: "lining",
        heightsFrom: "deck",
        widths: [800],
        heights: [2000],
        wall: 100,
      },
    ],
  }).doors[0]!,
})
const stair = (id: string, [from, fromRoom]: string[], [to, toRoom]: string[], isNew: boolean) =>
  ({ id, from, to, fromRoom, toRoom, new: isNew }) as Site["stairs"][number]

/** Hall H with a room R at the front door; up to landing L with bedroom B; a new stair to landing M with bedroom N. */
const site: Site = {
  occupied: true,
  rooms: [
    { ...plain, id: "H", use: "hall", storey: storey("g", 0) },
    { ...plain, id: "R", use: "living", storey: storey("g", 0) },
    { ...plain, id: "L", use: "landing", storey: storey("f", 2600) },
    { ...plain, id: "B", use: "bedroom", storey: storey("f", 2600) },
    { ...plain, id: "M", use: "landing", storey: storey("a", 5200) },
    { ...plain, id: "N", use: "bedroom", storey: storey("a", 5200) },
  ],
  doors: [
    doorTo("D1", "outside", "H"),
    doorTo("D2", "H", "R"),
    doorTo("D3", "L", "B"),
    doorTo("D4", "M", "N"),
  ],
  stairs: [stair("S1", ["g", "H"], ["f", "L"], false), stair("S2", ["f", "L"], ["a", "M"], true)],
}

describe("ways through a house", () => {
  const ways = waysOf(site)

  it("shut all rooms behind the one that is shut, and that one", () => {
    expect(ways.behind("H")).toEqual(["R", "L", "B", "M", "N"])
    expect(ways.behind("L")).toEqual(["B", "M", "N"])
    expect(ways.behind("R")).toEqual([])
    expect(ways.reached("R", new Set(["L"]))).toBe(true)
    expect(ways.reached("L", new Set(["L"]))).toBe(false)
  })

  it("leave a room open that has a second way", () => {
    const round = waysOf({ ...site, doors: [...site.doors, doorTo("D5", "outside", "R")] })
    expect(round.behind("H")).toEqual(["L", "B", "M", "N"])
    expect(round.reached("R", new Set(["H"]))).toBe(true)
    expect(round.reached("L", new Set(["H", "R"]))).toBe(false)
  })

  it("tell lived-in storeys from those that only a new stair leads to", () => {
    expect([...ways.lived]).toEqual(["H", "R", "L", "B"])
    expect([...ways.slept]).toEqual(["B"])
    expect([...waysOf({ ...site, occupied: false }).lived]).toEqual([])
  })

  it("begin at the landing where nothing leads outside", () => {
    const upstairs = waysOf({ ...site, rooms: site.rooms.slice(2), doors: site.doors.slice(2) })
    expect(upstairs.behind("L")).toEqual(["B", "M", "N"])
    expect(upstairs.behind("B")).toEqual([])
  })
})
