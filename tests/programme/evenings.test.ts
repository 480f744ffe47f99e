import { describe, expect, it } from "vitest"
import { clockAt } from "../../src/kernels/calendar/instant.ts"
import { eveningsOf } from "../../src/programme/evenings.ts"
import { waysOf } from "../../src/programme/ways.ts"
import { datedOf, programmeOf, siteOf, stepOf } from "../fixtures/programme.ts"
import { houseOf, surveyed } from "../fixtures/rooms.ts"

const { doors } = houseOf({
  doors: [
    { id: "D0", between: ["outside", "H"], finalExit: true, leafNow: "panelled" },
    { id: "D1", between: ["H", "R1"], leafNow: "panelled", work: { hang: "new", latch: true } },
  ].map((door) => ({
    name: door.id,
    lining: "keep",
    lengthsTo: "lining",
    heightsFrom: "deck",
    widths: [760],
    heights: [1990],
    wall: 100,
    ...door,
  })),
})
const site = siteOf([{ ...surveyed(), id: "H", use: "hall" }, surveyed()], { doors, occupied: true })
const dirty = { trade: "doors", noisy: true, dusty: true } as const
const steps = [
  stepOf({ key: "paint", stage: "prepare", hours: 12 }),
  stepOf({ key: "doors/D1/take-off", stage: "linings", hours: 0.5, ...dirty, dusty: false }),
  stepOf({ key: "doors/D1/lining", stage: "linings", hours: 1, ...dirty }),
  stepOf({ key: "doors/D1/hang", stage: "hang", hours: 2, ...dirty }),
]
const programme = datedOf(steps, site.rooms, programmeOf(), { doors, occupied: true })
const given = { programme, site, ways: waysOf(site), alarms: [{ room: "H", fittedBy: null }], reach: 1 }

describe("evenings of a house with people in it", () => {
  const evenings = eveningsOf(given)

  it("one for each day with work: 12 h of paint run over night, the door is hung on the second day", () => {
    expect(evenings.map(({ date }) => date)).toEqual(["2027-03-01", "2027-03-02"])
    expect(evenings.map(({ overnight }) => overnight.map(({ step }) => step.key))).toEqual([["paint"], []])
    expect(evenings.map(({ slept }) => slept)).toEqual([["R1"], ["R1"]])
    expect(evenings.map(({ doorways }) => doorways.map(({ door, leaf }) => `${door} ${leaf}`))).toEqual([
      ["D0 old", "D1 old"],
      ["D0 old", "D1 today"],
    ])
  })

  it("the hall's alarm is covered from the first dust of the day to the end of the last, 13:30 to 16:30 by hand", () => {
    // Paint 12 h by one person from Monday 08:00: Tuesday 12:00. Old leaf off 13:00 to 13:30, lining and leaf 3 h.
    const [cover] = evenings[1]!.covers
    const clock = (at: (typeof programme.steps)[number]["start"]) => clockAt(at, "Europe/London").time
    expect([clock(cover!.on), clock(cover!.off)]).toEqual(["13:30", "16:30"])
    expect(cover!.dust).toEqual(["doors/D1/lining", "doors/D1/hang"])
    expect(evenings[0]!.covers).toEqual([])
  })

  it("an alarm that dust does not reach stays bare; an empty house has no evenings", () => {
    expect(eveningsOf({ ...given, reach: 0 }).flatMap((each) => each.covers)).toEqual([])
    expect(eveningsOf({ ...given, site: { ...site, occupied: false } })).toEqual([])
  })
})
