import { describe, expect, it } from "vitest"
import { datedOf, programmeOf, stepOf } from "../fixtures/programme.ts"
import { surveyed } from "../fixtures/rooms.ts"

const rooms = [surveyed(), surveyed({ id: "R2" })]
const steps = [
  stepOf({ key: "mist", stage: "mist", hours: 8 }),
  stepOf({ key: "white", stage: "white", hours: 8 }),
  stepOf({ key: "floor", trade: "floors", stage: "floor", hours: 4 }),
  stepOf({ key: "else", trade: "floors", stage: "floor", hours: 4, room: "R2" }),
]
const long = steps.map((step) => (step.key === "mist" ? { ...step, hours: 24 } : step))

const dated = (progress: Record<string, string>[]) => datedOf(steps, rooms, programmeOf({ progress }))
describe("actual days", () => {
  it("work done in less time than planned lowers the bound with the finish", () => {
    const planned = datedOf(long, rooms, programmeOf())
    const early = datedOf(
      long,
      rooms,
      programmeOf({ progress: [{ step: "mist", started: "2027-03-01", finished: "2027-03-01" }] }),
    )
    expect(early.finish < planned.bound.finish).toBe(true)
    expect(early.bound.finish <= early.finish).toBe(true)
  })

  it("a slip of one day moves what waits for it by one day and says why; what was not reported done is still to do", () => {
    const slip = dated([{ step: "mist", started: "2027-03-01", finished: "2027-03-02" }])
    expect(slip.moves.map(({ key, was, now }) => [key, was, now])).toEqual([
      ["mist", "2027-03-01", "2027-03-02"],
      ["else", "2027-03-01", "2027-03-03"],
      ["white", "2027-03-02", "2027-03-03"],
      ["floor", "2027-03-03", "2027-03-04"],
    ])
    expect(slip.moves.find(({ key }) => key === "white")?.because).toContain("mist")
    // What is reported stands: white takes the Wednesday whole, the floor follows on Thursday, and no order ends sooner.
    expect([slip.finish, slip.bound.finish, slip.bound.proven]).toEqual(["2027-03-04", "2027-03-04", true])
  })

  it("what goes as planned moves nothing", () => {
    const asPlanned = ["mist", "else"].map((step) => ({
      step,
      started: "2027-03-01",
      finished: "2027-03-01",
    }))
    expect(dated(asPlanned).moves).toEqual([])
    expect(dated([]).moves).toEqual([])
  })

  it("of a step that is not there are a warning", () => {
    const { findings } = dated([{ step: "nobody", finished: "2027-03-01" }])
    expect(findings).toMatchObject([
      { code: "progress-unknown-step", severity: "warning", at: { path: ["progress", 0, "step"] } },
    ])
  })
})
