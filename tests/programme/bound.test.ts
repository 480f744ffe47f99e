import { describe, expect, it } from "vitest"
import { clockAt, type Instant } from "../../src/kernels/calendar/instant.ts"
import { seeded } from "../../src/kernels/schedule/seeded.ts"
import { chainsOf, leastFinish } from "../../src/programme/bound.ts"
import { datedProgramme } from "../../src/programme/dated.ts"
import { stepOf } from "../fixtures/programme.ts"
import { generatedTask } from "./generated.ts"
import { placeable } from "./parts.ts"

const least = (given: ReturnType<typeof placeable>) => leastFinish(given, chainsOf(given))
const time = (moment: number) => Object.values(clockAt(moment as Instant, "Europe/London")).join(" ")

describe("the least finish", () => {
  it("is the longest chain with its drying, by hand: 4 h, 30 h drying over the night, 2 h", () => {
    const gate = { process: "plaster", hours: 30, forbids: [] }
    const given = placeable([
      stepOf({ key: "a", stage: "mist", hours: 4, gate }),
      stepOf({ key: "b", stage: "white", hours: 2 }),
      stepOf({ key: "c", room: "R2", hours: 1 }),
    ])
    expect(time(least(given).finish)).toBe("2027-03-03 10:00")
    expect(least(given).by).toEqual({ kind: "chain", units: [0, 1] })
  })

  it("is the work of one crew where that is more: 5 rooms' worth of 4 h are two days and a half", () => {
    const given = placeable(
      Array.from({ length: 5 }, (_, index) =>
        stepOf({ key: `${index}`, room: index % 2 ? "R1" : "R2", hours: 4 }),
      ),
    )
    expect(time(least(given).finish)).toBe("2027-03-03 12:00")
    expect(least(given).by).toMatchObject({ kind: "crew", hours: 20 })
  })

  it("never lies behind what is dated", () => {
    for (let seed = 300; seed < 320; seed++) {
      const { bound, finish } = datedProgramme({ ...generatedTask(seeded(seed)), attempts: 10 })
      expect(bound.finish <= finish, `job ${seed}`).toBe(true)
    }
  })
})
