import { existsSync, readdirSync, readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import type { ScheduleProblem } from "../../../src/kernels/schedule/problem.ts"
import { shortestSchedule } from "../../../src/kernels/schedule/shortest-schedule.ts"
import { verifySchedule } from "../../../src/kernels/schedule/verify-schedule.ts"
import { bruteShortest, smallProject } from "./brute-force.ts"
import { madeProject } from "./instances.ts"

describe("shortest schedule", () => {
  it("of 150 small projects is what trying every order gives, proved", () => {
    for (let seed = 2000; seed < 2150; seed++) {
      const problem = smallProject(seed)
      const before = structuredClone(problem)
      const { starts, makespan, bound, proven } = shortestSchedule(problem, { maxSchedules: 30 })
      expect(makespan).toBe(bruteShortest(problem))
      expect({ bound, proven }).toEqual({ bound: makespan, proven: true })
      expect(verifySchedule(problem, starts, makespan)).toEqual([])
      expect(problem).toEqual(before)
    }
  })

  it("projects of 30 activities over the range of shapes: no breach, proved in all but the hardest few", () => {
    let proved = 0
    let count = 0
    for (const complexity of [1.5, 2.1]) {
      for (const factor of [0.25, 0.5, 0.75, 1]) {
        for (const strength of [0.2, 0.5, 0.7, 1]) {
          const problem = madeProject({ count: 30, complexity, factor, strength }, count++)
          const result = shortestSchedule(problem, { maxSchedules: 1500, maxConflicts: 2000 })
          expect(verifySchedule(problem, result.starts, result.makespan)).toEqual([])
          expect(result.bound).toBeLessThanOrEqual(result.makespan)
          if (result.proven) proved++
        }
      }
    }
    expect(proved / count).toBeGreaterThanOrEqual(0.9)
  })

  it("by counts alone the same problem gives the same schedule", () => {
    const problem = madeProject({ count: 40, complexity: 1.5, factor: 1, strength: 0.2 }, 4)
    const limits = { seed: 3, maxSchedules: 900, maxConflicts: 500 }
    expect(shortestSchedule(problem, limits)).toEqual(shortestSchedule(problem, limits))
  })

  it("a project without activities takes no time", () => {
    expect(shortestSchedule({ activities: [], capacities: [] })).toMatchObject({
      makespan: 0,
      bound: 0,
      proven: true,
    })
  })
})

interface Sample {
  name: string
  capacities: number[]
  jobs: { id: number; duration: number; demand: number[]; successors: number[] }[]
  optimum: number
}

const samples = new URL("../../../../shared/data/rcpsp/", import.meta.url)
const files = existsSync(samples) ? readdirSync(samples).filter((name) => name.endsWith(".json")) : []

describe.runIf(files.length > 0)("published projects (Kolisch and Sprecher, EJOR 96, 1996)", () => {
  it.each(files)("%s: the published optimum, proved", (file) => {
    const sample: Sample = JSON.parse(readFileSync(new URL(file, samples), "utf8"))
    const problem: ScheduleProblem = {
      capacities: sample.capacities,
      activities: sample.jobs.map(({ id, duration, demand }) => ({
        id: `${id}`,
        duration,
        demand,
        after: sample.jobs
          .filter(({ successors }) => successors.includes(id))
          .map((job) => ({ from: `${job.id}` })),
      })),
    }
    const result = shortestSchedule(problem)
    expect(verifySchedule(problem, result.starts, result.makespan)).toEqual([])
    expect(result).toMatchObject({ makespan: sample.optimum, bound: sample.optimum, proven: true })
  })
})
