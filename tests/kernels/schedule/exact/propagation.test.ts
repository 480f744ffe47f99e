import { describe, expect, it } from "vitest"
import { Propagation } from "../../../../src/kernels/schedule/exact/propagation.ts"
import { compiled } from "../../../../src/kernels/schedule/problem.ts"
import { seeded } from "../../../../src/kernels/schedule/seeded.ts"
import { smallProject } from "../brute-force.ts"

const chain = compiled({
  activities: [
    { id: "a", duration: 3, demand: [1], after: [] },
    { id: "b", duration: 2, demand: [1], after: [{ from: "a" }] },
    { id: "c", duration: 2, demand: [1], after: [] },
  ],
  capacities: [1],
})

describe("what follows from bounds", () => {
  it("a later start pushes followers and the end; an early end pulls them back", () => {
    const propagation = new Propagation(chain, 5, 9)
    const { trail, end } = propagation
    expect(propagation.propagateAll()).toBeNull()
    propagation.choose(0, 2)
    expect(propagation.propagate()).toBeNull()
    expect([trail.value[2], trail.value[2 * end]]).toEqual([5, 7])
    propagation.backTo(0)
    propagation.choose(2 * end + 1, -7)
    expect(propagation.propagate()).toBeNull()
    expect([trail.value[1], trail.value[3]]).toEqual([-2, -5])
  })

  it("a conflict is made of bounds that hold", () => {
    const propagation = new Propagation(chain, 5, 9)
    // to end at 5, a runs 0 to 3 and b 3 to 5 with the only crew; c has no room
    propagation.choose(2 * propagation.end + 1, -5)
    const conflict = propagation.propagate() ?? []
    expect(conflict.length).toBeGreaterThan(0)
    for (const literal of conflict) expect(propagation.trail.isTrue(literal)).toBe(true)
  })

  it("taking choices back restores every bound, whatever was chosen", () => {
    for (let seed = 0; seed < 50; seed++) {
      const project = compiled(smallProject(seed, 10))
      const longest = project.duration.reduce((a, b) => a + b) + 60
      const propagation = new Propagation(project, 0, longest)
      if (propagation.hopeless || propagation.propagateAll()) continue
      const chance = seeded(seed)
      const { value } = propagation.trail
      const snapshots: number[][] = []
      for (let step = 0; step < 12; step++) {
        snapshots.push([...value])
        const key = Math.floor(chance() * 2 * project.count)
        if (value[key]! + value[key ^ 1]! === 0) break
        propagation.choose(key, value[key]! + 1)
        if (propagation.propagate()) break
      }
      while (propagation.trail.depth > 0) {
        propagation.backTo(propagation.trail.depth - 1)
        expect([...value]).toEqual(snapshots[propagation.trail.depth])
      }
    }
  })
})
