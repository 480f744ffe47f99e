import { describe, expect, it } from "vitest"
import { milestones } from "../../../src/press/records/milestones.ts"
import { smallResult } from "../../fixtures/small-job.ts"

const result = await smallResult()
const of = (change: Partial<typeof result.programme>) =>
  milestones({ ...result, programme: { ...result.programme, ...change } })

describe("days that are no step", () => {
  it("are the finish, proven or with its gap in working days", () => {
    expect(of({ bound: { finish: result.programme.finish, proven: true, by: "the chain" } })).toEqual([
      {
        id: "finish",
        title: "Planned finish",
        on: result.programme.finish,
        because: "Proven shortest: what forces it is the chain.",
      },
    ])
    // Monday 1 to Wednesday 3 March 2027.
    const [open] = of({
      finish: "2027-03-03",
      bound: { finish: "2027-03-01", proven: false, by: "the chain" },
    })
    expect(open?.because).toContain("2 working days between are not proven")
  })

  it("are the first night with what it waits for last, and nothing where nothing is dated", () => {
    const firstNight = { on: "2027-03-05", after: ["floors/C2/oil"], conditions: [], rooms: ["C2"] }
    expect(of({ firstNight })[1]).toMatchObject({ id: "first-night", on: "2027-03-05" })
    expect(of({ firstNight })[1]?.because).toContain("Oil (C2)")
    expect(of({ steps: [] })).toEqual([])
  })
})
