import { describe, expect, it } from "vitest"
import { prepareJobs } from "../../src/commands/prepare.ts"
import { alarmPlaces, eveningsIn } from "../../src/sheets/evenings-of-job.ts"

const jobsDir = new URL("../../jobs", import.meta.url).pathname
const { jobs } = await prepareJobs({ jobsDir, only: "lock-house" })
const { result } = jobs[0]!

describe("evenings of the demo job", () => {
  it("alarms stand in the rooms whose electrics write one; those of the new storey are up from its second fix", () => {
    expect(alarmPlaces(result)).toEqual(
      expect.arrayContaining([
        { room: "B4", fittedBy: null },
        { room: "C1", fittedBy: null },
        { room: "A4", fittedBy: "electrics/A4/fit" },
      ]),
    )
  })

  it("one for each day that is worked, none on a day off", () => {
    const dates = eveningsIn(result).map(({ date }) => date)
    expect(new Set(dates).size).toBe(dates.length)
    expect(dates.every((date) => new Date(date).getUTCDay() % 6 !== 0)).toBe(true)
  })
})
