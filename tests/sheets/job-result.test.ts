import { describe, expect, it } from "vitest"
import { resultsIn } from "../../src/sheets/job-result.ts"
import { smallResult } from "../fixtures/small-job.ts"

describe("the results of one room", () => {
  it("are its own, in the order of the trades, without those across the job", async () => {
    const result = await smallResult()
    const across = { ...result.results[0]!, room: null }
    const [hall, living] = result.house.rooms
    const all = { ...result, results: [across, ...result.results] }
    expect(resultsIn(all, hall!).map((each) => each.trade)).toEqual(["floors"])
    expect(resultsIn(all, living!).map((each) => each.trade)).toEqual(["floors", "joinery"])
  })
})
