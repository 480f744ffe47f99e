import { describe, expect, it } from "vitest"
import { joineryWork } from "../../../src/trades/joinery/work.ts"
import { joineryTask } from "./task.ts"

describe("steps of a room's joinery", () => {
  const { steps, cautions } = joineryWork(
    joineryTask({
      nosing: { lengths: [2050] },
      threshold: [{ door: "D1", profile: "flat" }],
      made: [{ what: "shelf", product: "plank", lengths: [400] }],
      stairs: [{ stair: "S2", parts: [{ what: "handrail", product: "plank", lengths: [2000] }] }],
    }),
  )

  it("go from architraves to skirting to thresholds; stair and nosings last", () => {
    expect(steps.map((step) => [step.key, step.stage])).toEqual([
      ["joinery/R1/architraves", "second-fix"],
      ["joinery/R1/skirting", "second-fix"],
      ["joinery/R1/made", "second-fix"],
      ["joinery/R1/thresholds", "second-fix"],
      ["joinery/R1/guarding-S2", "nosings"],
      ["joinery/R1/stair-S2", "nosings"],
      ["joinery/R1/nosings", "nosings"],
    ])
  })

  it("hold at the open edge before anything is fitted there", () => {
    const guarding = steps.find((step) => step.key.includes("guarding"))!
    expect(guarding.hold).toBeTruthy()
    expect(guarding.detail).toContain("2,050 mm")
    const later = steps.filter((step) => step.stage === "nosings" && step !== guarding)
    expect(later.map((step) => step.after)).toEqual([[guarding.key], [guarding.key]])
    expect(cautions.map((caution) => caution.id)).toContain("open-edge")
  })

  it("leave the guarding alone where nothing is done at the edge", () => {
    const keys = joineryWork(joineryTask()).steps.map((step) => step.key)
    expect(keys).toEqual(["joinery/R1/architraves", "joinery/R1/skirting"])
  })
})
