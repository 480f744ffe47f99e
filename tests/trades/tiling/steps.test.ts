import { describe, expect, it } from "vitest"
import { stageRank } from "../../../src/trades/stages.ts"
import { tilingWork } from "../../../src/trades/tiling/work.ts"
import { task } from "./wash-room.ts"

describe("order of tiling", () => {
  const { steps } = tilingWork(task({ floor: true, walls: [{ wall: 2, top: 2000 }] }))

  it("lay, cure, grout, cure; seal after the sanitaryware", () => {
    expect(steps.map((step) => step.key.split("/")[2])).toEqual(["prepare", "lay", "grout", "seal"])
    expect(steps[2]!.after).toEqual([steps[1]!.key])
    expect(steps[1]!.gate!.hours).toBeGreaterThanOrEqual(24)
    expect(steps[2]!.gate!.forbids).toContain("walk")
    expect(stageRank(steps[3]!.stage)).toBeGreaterThan(stageRank("second-fix"))
    expect(steps[3]!.after).toContain("plumbing/R1/seal")
  })

  it("in freezing air nothing is laid: errors, no hours", () => {
    const given = task({ floor: true })
    const cold = { ...given, job: { ...given.job, climate: { ...given.job.climate, temperature: 3 } } }
    const work = tilingWork(cold)
    expect(work.findings.map((each) => each.code)).toEqual([
      "air-outside-range",
      "air-outside-range",
      "air-outside-range",
    ])
    expect(work.steps.every((step) => step.gate === undefined)).toBe(true)
  })
})
