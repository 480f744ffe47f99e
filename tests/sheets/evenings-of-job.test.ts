import { describe, expect, it } from "vitest"
import { alarmPlaces, eveningsIn } from "../../src/sheets/evenings-of-job.ts"
import { lockHouse } from "../fixtures/demo.ts"

const { result } = lockHouse

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
