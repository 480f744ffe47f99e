import { describe, expect, it } from "vitest"
import { run } from "./run.ts"

describe("doors of a room", () => {
  it("are those that swing into it, and each doorway belongs to one room", () => {
    const { works, job } = run({})
    const all = [...works.values()].flatMap((work) => Object.keys(work.results.doors as object))
    expect(all.sort()).toEqual(job.house.doors.map((door) => door.id).sort())
    expect(Object.keys(works.get("C1")!.results.doors as object).sort()).toEqual(["D13", "D14"])
  })

  it("same job, same result, and the job is not changed", () => {
    const before = run({ D5: { hang: "new" } })
    const house = JSON.stringify(before.job.house.doors)
    const after = run({ D5: { hang: "new" } })
    expect(JSON.stringify([...after.works])).toBe(JSON.stringify([...before.works]))
    expect(JSON.stringify(before.job.house.doors)).toBe(house)
  })
})
