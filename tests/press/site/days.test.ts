import { describe, expect, it } from "vitest"
import { hostedDays } from "../../../src/press/site/days.ts"
import { smallResult } from "../../fixtures/small-job.ts"

const { programme } = await smallResult()
const days = hostedDays(programme, new Map([["C2", "living room"]]), (room) => `${room.toLowerCase()}-02`)

describe("the days of work on a phone", () => {
  it("name crew, room, its order of work and each step: with its hour on its first day, as going on after that", () => {
    expect(days.map(({ title }) => title)).toEqual(["Mon 1 Mar 2027", "Tue 2 Mar 2027", "Wed 3 Mar 2027"])
    expect(days[0]!.work).toEqual([
      { crew: "joiners", room: "C2", roomName: "living room", sheet: "c2-02", lines: ["08:00 Lay"] },
    ])
    expect(days[1]!.work[0]!.lines).toEqual(["goes on: Lay"])
  })

  it("hold every step with work, each first on the day the programme gives it", () => {
    const told = days.flatMap(({ work }) =>
      work.flatMap(({ lines }) => lines.filter((line) => /^\d\d:/.test(line))),
    )
    expect(told.map((line) => line.slice(6)).sort()).toEqual(
      programme.steps
        .filter(({ step }) => step.hours > 0)
        .map(({ step }) => step.title)
        .sort(),
    )
  })

  it("are none where nothing is to be done", () => {
    expect(hostedDays({ ...programme, steps: [] }, new Map(), () => null)).toEqual([])
  })
})
