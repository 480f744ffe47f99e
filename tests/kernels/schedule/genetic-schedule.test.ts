import { describe, expect, it } from "vitest"
import { geneticSchedule } from "../../../src/kernels/schedule/genetic-schedule.ts"
import { compiled } from "../../../src/kernels/schedule/problem.ts"
import { seeded } from "../../../src/kernels/schedule/seeded.ts"
import { verifySchedule } from "../../../src/kernels/schedule/verify-schedule.ts"
import { bruteShortest, smallProject } from "./brute-force.ts"
import { madeProject } from "./instances.ts"

const never = () => false

describe("genetic search", () => {
  it("finds the shortest of 60 small projects, as trying every order does", () => {
    for (let seed = 0; seed < 60; seed++) {
      const problem = smallProject(seed)
      const project = compiled(problem)
      const found = geneticSchedule(project, {
        chance: seeded(seed),
        maxSchedules: 600,
        bound: 0,
        stop: never,
      })
      expect(found.makespan).toBe(bruteShortest(problem))
    }
  })

  it("the same seed gives the same schedule; more schedules never a longer one; no breach", () => {
    const problem = madeProject({ count: 60, complexity: 1.5, factor: 0.75, strength: 0.2 }, 3)
    const project = compiled(problem)
    const search = (maxSchedules: number) =>
      geneticSchedule(project, { chance: seeded(5), maxSchedules, bound: 0, stop: never })
    const [short, again, long] = [search(600), search(600), search(3000)]
    expect(again).toEqual(short)
    expect(long.makespan).toBeLessThanOrEqual(short.makespan)
    const starts = new Map(project.ids.map((id, a) => [id, long.starts[a]!]))
    expect(verifySchedule(problem, starts, long.makespan)).toEqual([])
  })

  it("ends when told to", () => {
    const project = compiled(madeProject({ count: 30, complexity: 1.5, factor: 1, strength: 0.2 }, 3))
    let asked = 0
    const stop = () => ++asked > 10
    const found = geneticSchedule(project, { chance: seeded(5), maxSchedules: 1e9, bound: 0, stop })
    expect(found.starts).toHaveLength(32)
  })
})
