import { describe, expect, it } from "vitest"
import { benchJoinery } from "../../../src/commands/bench/joinery.ts"

describe("the saw's measurements", () => {
  it("plan every profile of a job, and never cost more than first-fit", async () => {
    const lines: string[] = []
    const asked = { rooms: 3, againstArcFlow: 1, againstFirstFit: 8, limitSeconds: 1 }
    const { job, firstFit, arcFlow } = await benchJoinery({ ...asked, print: (line) => lines.push(line) })
    expect(job).toMatchObject({ profiles: 4, proven: 4 })
    expect(firstFit.costSaved).toBeGreaterThanOrEqual(0)
    expect(arcFlow.cases).toBe(1)
    expect(lines).toHaveLength(3)
  })
})
