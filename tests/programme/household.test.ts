import { describe, expect, it } from "vitest"
import { datedOf, programmeOf, stepOf } from "../fixtures/programme.ts"
import { houseOf, surveyed } from "../fixtures/rooms.ts"

const plain = surveyed()
const common = {
  lining: "keep",
  lengthsTo: "lining",
  heightsFrom: "deck",
  widths: [760],
  heights: [1990],
  wall: 100,
}
const { doors } = houseOf({
  doors: [
    { ...common, id: "D0", name: "front", between: ["outside", "H"], finalExit: true },
    { ...common, id: "D1", name: "bedroom", between: ["H", "R1"], leafNow: "old", work: { hang: "new" } },
  ],
})
const rooms = [
  { ...plain, id: "H", use: "hall" as const },
  plain,
  { ...plain, id: "T", storey: { ...plain.storey, id: "attic", deck: 2600 } },
]
const stairs = [{ id: "S1", from: "ground", to: "attic", fromRoom: "H", toRoom: "T", new: true }] as never
const steps = [
  stepOf({ key: "up", room: "T", stage: "oil", hours: 30 }),
  stepOf({ key: "doors/D1/hang", trade: "doors", stage: "hang", hours: 2 }),
]
const found = (household: object, given = steps) =>
  datedOf(given, rooms, programmeOf({ household }), { doors, stairs, occupied: true }).findings.map(
    ({ code, severity, at }) => [code, severity, at.path.join("/")],
  )

describe("the people in the house", () => {
  it("nobody sleeps in the new storey; a bedroom of which nothing is said is asked for", () => {
    expect(found({ sleeps: [{ room: "T", who: "a guest" }] })).toEqual([
      ["sleeps-in-new-storey", "error", "household/sleeps/0/room"],
      ["sleeper-unknown", "note", "household"],
      ["way-out-without-latch", "warning", "doors/1/work"],
    ])
  })

  it("building control that comes before there is all to be seen", () => {
    const sleeps = [{ room: "R1", who: "a couple" }]
    expect(found({ sleeps, controlVisit: "2027-03-02" })[0]).toEqual([
      "control-visit-early",
      "warning",
      "household/controlVisit",
    ])
    expect(found({ sleeps, controlVisit: "2027-04-02" }).map(([code]) => code)).not.toContain(
      "control-visit-early",
    )
  })

  it("a leaf that comes off and does not come back by evening is an error", () => {
    const off = stepOf({ key: "doors/D1/take-off", trade: "doors", stage: "linings", hours: 1 })
    const codes = (given: typeof steps) => found({}, given).map(([code]) => code)
    expect(codes([off])).toContain("doorway-left-open")
    const dries = { process: "primer", hours: 24, forbids: ["close" as const] }
    expect(codes([{ ...off, gate: dries }, ...steps])).toContain("doorway-left-open")
    expect(codes([off, ...steps])).not.toContain("doorway-left-open")
  })
})
