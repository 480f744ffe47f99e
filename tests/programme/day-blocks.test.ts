import { describe, expect, it } from "vitest"
import { clockAt } from "../../src/kernels/calendar/instant.ts"
import { dayBlocks } from "../../src/programme/day-blocks.ts"
import { waysOf } from "../../src/programme/ways.ts"
import { datedOf, programmeOf, siteOf, stepOf } from "../fixtures/programme.ts"
import { houseOf, surveyed } from "../fixtures/rooms.ts"

const { doors } = houseOf({
  doors: [
    {
      id: "D1",
      name: "Door",
      between: ["R1", "R2"],
      lining: "replace",
      lengthsTo: "stud",
      heightsFrom: "deck",
      widths: [840],
      heights: [2050],
      wall: 100,
    },
  ],
})
const site = siteOf([surveyed(), surveyed({ id: "R2" })], { doors, occupied: true })
const door = (name: string, stage: "prepare" | "linings" | "hang", hours: number) =>
  stepOf({ key: `doors/D1/${name}`, trade: "doors", stage, hours })
const steps = [
  stepOf({ key: "busy", trade: "floors", stage: "prepare", room: "R2", hours: 5 }),
  door("take-off", "prepare", 0.5),
  door("lining", "linings", 1.5),
  door("hang", "hang", 2),
]

describe("a doorway of a house with people in it", () => {
  it("is one block of old leaf off, lining, new leaf; in an empty house it is not", () => {
    const blocks = (occupied: boolean) =>
      dayBlocks(steps, { ...site, occupied }, waysOf({ ...site, occupied }))
    expect([...blocks(true).keys()]).toEqual(["doors/D1/take-off", "doors/D1/lining", "doors/D1/hang"])
    expect(blocks(false).size).toBe(0)
  })

  it("does not stand open in the evening: it is begun the next morning rather than not ended", () => {
    const { steps: dated } = datedOf(steps, site.rooms, programmeOf(), { doors, occupied: true })
    const days = dated
      .filter(({ step }) => step.trade === "doors")
      .flatMap(({ start, finish }) => [
        clockAt(start, "Europe/London").date,
        clockAt(finish, "Europe/London").date,
      ])
    expect(new Set(days).size).toBe(1)
  })

  it("with more work than a day holds is an error in a chain of words", () => {
    const long = steps.map((step) => (step.key.endsWith("hang") ? { ...step, hours: 9 } : step))
    const { findings } = datedOf(long, site.rooms, programmeOf(), { doors, occupied: true })
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([["door-day-too-long", "error"]])
    expect(findings[0]!.message).toContain("→")
  })
})
