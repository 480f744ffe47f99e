import { describe, expect, it } from "vitest"
import { doorResult, scheduleRow } from "../../../src/trades/doors/results.ts"
import { rulesRead } from "../../../src/trades/doors/rules-read.ts"
import { doorsOfHouse } from "../../../src/trades/doors/work.ts"
import { doorRules, jobOf } from "./houses.ts"
import { house } from "./run.ts"

const { doors } = doorsOfHouse(jobOf({ ...house, work: { D5: { hang: "new" } } }), rulesRead(doorRules))
const hung = (id: string) => doors.find((each) => each.door.id === id)!

describe("a door as plain data", () => {
  it("has the same keys for every row, with nothing where no leaf is hung", () => {
    const keys = doors.map((each) => Object.keys(scheduleRow(each)).join())
    expect(new Set(keys).size).toBe(1)
    expect(scheduleRow(hung("D7"))).toMatchObject({
      hang: "stays",
      leafWidth: null,
      hinges: null,
      hungWidth: null,
    })
  })

  it("adds up: leaf and gaps fill each measured width", () => {
    const { across } = doorResult(hung("D5")) as { across: Record<string, number>[] }
    expect(across).toHaveLength(3)
    for (const { opening, hingeGap, leaf, lockGap } of across)
      expect(hingeGap! + leaf! + lockGap!).toBe(opening)
  })

  it("is plain: it survives being written as JSON", () => {
    const result = doorResult(hung("D5"))
    expect(JSON.parse(JSON.stringify(result))).toEqual(result)
  })
})
