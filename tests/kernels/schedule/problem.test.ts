import { describe, expect, it } from "vitest"
import type { ScheduleProblem } from "../../../src/kernels/schedule/problem.ts"
import { compiled, impossibility } from "../../../src/kernels/schedule/problem.ts"

const project: ScheduleProblem = {
  activities: [
    {
      id: "c",
      duration: 3,
      demand: [1],
      after: [
        { from: "a", lag: 2 },
        { from: "b", kind: "start-start", lag: 1 },
      ],
    },
    { id: "a", duration: 4, demand: [2], after: [] },
    { id: "b", duration: 2, demand: [0], after: [], release: 7 },
  ],
  capacities: [2],
}

describe("a project by numbers", () => {
  it("turns every link into a gap from start to start, and finds heads and tails", () => {
    const { ids, gaps, head, tail } = compiled(project)
    expect(ids).toEqual(["a", "b", "c"])
    expect(gaps).toEqual([
      { from: 0, to: 2, gap: 6 },
      { from: 1, to: 2, gap: 1 },
    ])
    // c: after a 4 + 2 = 6, after b's release 7 + 1 = 8
    expect([...head]).toEqual([0, 7, 8])
    // a: 6 to c's start and 3 to its finish; b: 1 + 3
    expect([...tail]).toEqual([9, 4, 3])
  })

  it("names what makes a project impossible", () => {
    expect(impossibility(project)).toBeNull()
    expect(impossibility({ ...project, capacities: [1] })).toEqual({ kind: "demand", id: "a", resource: 0 })
    const ring = [
      { id: "x", duration: 1, demand: [], after: [{ from: "y" }] },
      { id: "y", duration: 1, demand: [], after: [{ from: "x" }] },
    ]
    expect(impossibility({ activities: ring, capacities: [] })).toMatchObject({ kind: "ring" })
    expect(() => compiled({ activities: ring, capacities: [] })).toThrow("no schedule")
  })

  it("refuses times that are not whole", () => {
    const half = { id: "h", duration: 1.5, demand: [], after: [] }
    expect(() => compiled({ activities: [half], capacities: [] })).toThrow("not whole")
  })
})
