import { describe, expect, it } from "vitest"
import {
  guardingKey,
  openEdges,
  stairCautions,
  stairSteps,
} from "../../../../src/trades/joinery/stairs/steps.ts"
import { joineryTask } from "../task.ts"

describe("work at an open edge", () => {
  const task = joineryTask({ nosing: { lengths: [2050] } })

  it("is a hold point in the room at the stair's head", () => {
    expect(openEdges(task).map((stair) => stair.id)).toEqual(["S2"])
    const [step] = stairSteps(task)
    expect(step).toMatchObject({ key: guardingKey("R1", "S2"), room: "R1", stage: "nosings" })
    expect(step!.hold).toContain("barrier")
    expect(stairCautions(openEdges(task))).toHaveLength(1)
  })

  it("is none where nothing is done there", () => {
    expect(stairSteps(joineryTask())).toEqual([])
    expect(stairCautions([])).toEqual([])
  })
})
