import { describe, expect, it } from "vitest"
import { lowerBounds } from "../../../src/kernels/schedule/lower-bounds.ts"
import { compiled } from "../../../src/kernels/schedule/problem.ts"
import { bruteShortest, smallProject } from "./brute-force.ts"

describe("lower bounds", () => {
  it("are never above the shortest of 300 small projects, and meet it in most", () => {
    let met = 0
    for (let seed = 1000; seed < 1300; seed++) {
      const problem = smallProject(seed)
      const shortest = bruteShortest(problem)
      const { criticalPath, resource, disjunctive, best } = lowerBounds(compiled(problem))
      for (const bound of [criticalPath, resource, disjunctive, best])
        expect(bound).toBeLessThanOrEqual(shortest)
      if (best === shortest) met++
    }
    expect(met).toBeGreaterThan(150)
  })

  it("worked by hand: chain, work and activities that exclude one another", () => {
    // a 3 → b 2 is a chain of 5; units 2×3 + 1×2 + 2×4 + 2×1 = 18 over 2 is 9;
    // b waits for a, and no other two fit side by side: 3 + 2 + 4 + 1 = 10
    const project = compiled({
      activities: [
        { id: "a", duration: 3, demand: [2], after: [] },
        { id: "b", duration: 2, demand: [1], after: [{ from: "a" }] },
        { id: "c", duration: 4, demand: [2], after: [] },
        { id: "d", duration: 1, demand: [2], after: [] },
      ],
      capacities: [2],
    })
    expect(lowerBounds(project)).toEqual({ criticalPath: 5, resource: 9, disjunctive: 10, best: 10 })
  })
})
