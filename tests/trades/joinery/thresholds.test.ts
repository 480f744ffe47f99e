import { describe, expect, it } from "vitest"
import { thresholdBars } from "../../../src/trades/joinery/thresholds.ts"
import { surveyed } from "../../fixtures/rooms.ts"
import { joineryTask } from "./task.ts"

describe("threshold bars", () => {
  const task = joineryTask(
    {
      threshold: [
        { door: "D2", profile: "ramp" },
        { door: "D1", profile: "flat" },
      ],
    },
    {
      passed: { R1: { floorBuildUp: 19, floorFinish: "oak" }, R2: { floorBuildUp: 13, floorFinish: "tile" } },
    },
  )
  const other = { ...surveyed(), id: "R2", storey: task.room.storey }
  const job = { ...task.job, house: { ...task.job.house, rooms: [task.room, other] } }
  const [bar, unknown] = thresholdBars({ ...task, job })

  it("have the lining's width, the level either side and the step going out", () => {
    expect(bar).toMatchObject({
      door: "D2",
      length: 768,
      here: { room: "R1", level: 19, finish: "oak" },
      there: { room: "R2", level: 13, finish: "tile" },
      step: -6,
    })
  })

  it("leave the step to the tape where the other floor is not surveyed", () => {
    expect(unknown).toMatchObject({ door: "D1", there: { room: "B4", level: null }, step: null })
  })
})
