import { describe, expect, it } from "vitest"
import { stairFindings } from "../../../../src/trades/joinery/stairs/findings.ts"
import { stairsOf } from "../../../../src/trades/joinery/stairs/stair.ts"
import { joineryWork } from "../../../../src/trades/joinery/work.ts"
import { joineryTask } from "../task.ts"

function found(written: Record<string, unknown>, built: Record<string, unknown> = {}) {
  const task = joineryTask(written, { passed: { R1: { floorBuildUp: 19 }, B4: { floorBuildUp: 12 } } })
  const stairs = task.job.house.stairs.map((stair) => ({ ...stair, ...built }))
  const job = { ...task.job, house: { ...task.job.house, stairs } }
  const [seen] = stairsOf(job, [{ room: task.room, work: joineryWork(task) }])
  return stairFindings(seen!, job.rules)
}

describe("findings of a stair", () => {
  it("put unequal rises before building control, with first and last rise", () => {
    const unequal = found({}).find((finding) => finding.code === "stair-unequal")!
    expect(unequal).toMatchObject({ severity: "warning", at: { file: "house.yaml", path: ["stairs", 0] } })
    expect(unequal.message).toContain("193.0")
    expect(unequal.message).toContain("224.0")
    expect(unequal.mend).toContain("building control")
  })

  it("are none for a stair that is right and guarded", () => {
    const guarded = {
      stair: "S2",
      onTreads: 14,
      parts: [{ what: "guarding", product: "plank", lengths: [2050] }],
    }
    // first 190 + 14 - 12 = 192, others 190, last 190 + 19 - 14 = 195: within 5
    expect(found({ stairs: [guarded] }, { rise: 190, going: 240 })).toEqual([])
  })

  it("note an open edge that nobody guards", () => {
    const codes = found({}, { rise: 190, going: 240 }).map(({ code, severity }) => `${severity} ${code}`)
    expect(codes).toContain("note open-edge-not-guarded")
  })
})
