import { describe, expect, it } from "vitest"
import { keptLinings } from "../../../src/trades/joinery/kept-linings.ts"
import { joineryTask } from "./task.ts"

describe("linings that stay", () => {
  // board and underlay 19, 1 of clearance (common practice: 1 to 2)
  it("are cut at the foot by board, underlay and clearance", () => {
    expect(keptLinings(joineryTask())).toEqual([
      { door: "D1", wall: 1, cut: 20 },
      { door: "D2", wall: 1, cut: 20 },
    ])
  })

  it("are left alone where no floating floor is laid", () => {
    expect(
      keptLinings(joineryTask({}, { passed: { R1: { floorBuildUp: 12, floorFinish: "carpet" } } })),
    ).toEqual([])
  })
})
