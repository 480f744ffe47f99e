import { describe, expect, it } from "vitest"
import { storeyFindings, storeyPlans } from "../../src/survey/storey-plan.ts"
import { houseOf, rulesOf, surveyed } from "../fixtures/rooms.ts"
import { demoHouses } from "./demo.ts"

const door = (id: string, between: [string, string]) => ({
  id,
  name: id,
  between,
  swingsInto: between[1],
  hinges: "left",
  lining: "keep",
  lengthsTo: "lining",
  heightsFrom: "deck",
  widths: [800],
  heights: [2000],
  wall: 100,
})

/** R1 4,000 x 3,000; R2 beyond its wall 1; both openings at the places told. */
function twoRooms(places: { first: [number, number]; second?: [number, number] }) {
  const house = houseOf({ doors: [door("D1", ["R1", "R2"]), door("D2", ["R1", "R2"])] })
  const doorsOf = (side: 0 | 1) => [
    { door: "D1", wall: 1, fromLeft: places.first[side] },
    ...(places.second ? [{ door: "D2", wall: 1, fromLeft: places.second[side] }] : []),
  ]
  const rooms = [
    surveyed({ id: "R1", doors: doorsOf(0) }, house),
    surveyed({ id: "R2", doors: doorsOf(1) }, house),
  ]
  return { storeys: house.storeys, rooms }
}

describe("storeyPlans", () => {
  it("puts the next room behind the wall, its opening over the other's", () => {
    const [plan] = storeyPlans(twoRooms({ first: [500, 700] }))
    expect(plan!.unplaced).toEqual([])
    const [one, two] = plan!.rooms
    expect(one!.outline[0]).toEqual({ x: 0, y: 0 })
    // Seen from R2 the wall runs the other way: its left end is 700 beyond the opening's far side at 500 + 800: x = 2000; 100 of wall between.
    expect(two!.outline[0]!.x).toBeCloseTo(2000, 6)
    expect(two!.outline[0]!.y).toBeCloseTo(100, 6)
    expect(two!.outline[1]!.x).toBeCloseTo(-2000, 6)
    expect(two!.outline[2]!.y).toBeCloseTo(3100, 0)
  })

  it("agrees where both sides of a second opening do, within the wall's thickness", () => {
    // D2 at 2500 from R1's left; D1 tells that R2's left end lies at x = 2000 + ... : 3300 + f = x of R2's left end.
    const agreeing = twoRooms({ first: [500, 2300], second: [2500, 300 + 60] })
    const [plan] = storeyPlans(agreeing)
    expect(storeyFindings(plan!, rulesOf())).toEqual([])
  })

  it("finds an opening whose sides disagree by more than the wall's thickness, where it was written", () => {
    const [plan] = storeyPlans(twoRooms({ first: [500, 2300], second: [2500, 300 + 160] }))
    const findings = storeyFindings(plan!, rulesOf())
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([
      ["opening-sides-disagree", "warning"],
    ])
    expect(findings[0]!.at).toEqual({ file: "rooms/r2.yaml", path: ["doors", 1, "fromLeft"] })
    expect(findings[0]!.message).toContain("160 mm")
  })

  it("finds rooms that would stand in one another", () => {
    const house = houseOf({ doors: [door("D1", ["R1", "R2"]), door("D2", ["R1", "R3"])] })
    const rooms = [
      surveyed(
        {
          id: "R1",
          doors: [
            { door: "D1", wall: 1, fromLeft: 500 },
            { door: "D2", wall: 1, fromLeft: 2500 },
          ],
        },
        house,
      ),
      surveyed({ id: "R2", doors: [{ door: "D1", wall: 1, fromLeft: 1500 }] }, house),
      surveyed({ id: "R3", doors: [{ door: "D2", wall: 1, fromLeft: 1500 }] }, house),
    ]
    const [plan] = storeyPlans({ storeys: house.storeys, rooms })
    expect(storeyFindings(plan!, rulesOf()).map(({ code }) => code)).toEqual(["rooms-overlap"])
  })

  it("lists rooms that no shared opening ties to the others, and those whose doorway stands in no wall", () => {
    const house = houseOf({ doors: [door("D1", ["R1", "R2"])] })
    const rooms = [
      surveyed({ id: "R1", doors: [{ door: "D1", wall: 1, fromLeft: 500 }] }, house),
      surveyed({ id: "R2", doors: [{ door: "D1", wall: 9, fromLeft: 500 }] }, house),
      surveyed({ id: "R3" }, house),
    ]
    const [plan] = storeyPlans({ storeys: house.storeys, rooms })
    expect(plan!.rooms.map(({ room }) => room.id)).toEqual(["R1"])
    expect(plan!.unplaced.map(({ id }) => id)).toEqual(["R2", "R3"])
  })

  it("has every room of the demo jobs in its place, all openings agreeing from both sides", () => {
    for (const house of demoHouses()) {
      for (const plan of storeyPlans(house)) {
        expect(plan.unplaced.map(({ id }) => id)).toEqual([])
        expect(storeyFindings(plan, rulesOf())).toEqual([])
      }
    }
  })
})
