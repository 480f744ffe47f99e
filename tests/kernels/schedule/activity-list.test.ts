import { describe, expect, it } from "vitest"
import {
  listByFinishBackward,
  listByStart,
  longestTailList,
  sampledList,
} from "../../../src/kernels/schedule/activity-list.ts"
import { compiled } from "../../../src/kernels/schedule/problem.ts"
import { seeded } from "../../../src/kernels/schedule/seeded.ts"
import { smallProject } from "./brute-force.ts"

describe("activity lists", () => {
  it("each list holds every activity once, behind all it waits for", () => {
    for (let seed = 0; seed < 100; seed++) {
      const project = compiled(smallProject(seed, 15))
      const chance = seeded(seed)
      const lists = [longestTailList(project), sampledList(project, chance)]
      const consistent = Int32Array.from(project.head)
      lists.push(
        listByStart(project, consistent),
        listByFinishBackward(project, consistent).slice().reverse(),
      )
      for (const list of lists) {
        expect([...list].sort((a, b) => a - b)).toEqual(Array.from({ length: project.count }, (_, a) => a))
        const place = new Map([...list].map((activity, at) => [activity, at]))
        for (const { from, to } of project.gaps) expect(place.get(from)!).toBeLessThan(place.get(to)!)
      }
    }
  })

  it("takes the longest way still to go first", () => {
    const project = compiled({
      activities: [
        { id: "short", duration: 1, demand: [], after: [] },
        { id: "long", duration: 2, demand: [], after: [] },
        { id: "then", duration: 5, demand: [], after: [{ from: "long" }] },
      ],
      capacities: [],
    })
    expect([...longestTailList(project)].map((a) => project.ids[a])).toEqual(["long", "then", "short"])
  })
})
