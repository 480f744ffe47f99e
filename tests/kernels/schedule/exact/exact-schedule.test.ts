import { describe, expect, it } from "vitest"
import { exactSchedule } from "../../../../src/kernels/schedule/exact/exact-schedule.ts"
import type { Found } from "../../../../src/kernels/schedule/genetic-schedule.ts"
import { geneticSchedule } from "../../../../src/kernels/schedule/genetic-schedule.ts"
import { compiled } from "../../../../src/kernels/schedule/problem.ts"
import { seeded } from "../../../../src/kernels/schedule/seeded.ts"
import { verifySchedule } from "../../../../src/kernels/schedule/verify-schedule.ts"
import { bruteShortest, smallProject } from "../brute-force.ts"
import { madeProject } from "../instances.ts"

const never = () => false

/** A schedule as bad as can be: one after another, waits and all. */
function oneAfterAnother(problem: ReturnType<typeof compiled>): Found {
  let at = Math.max(0, ...problem.release)
  const starts = new Int32Array(problem.count)
  for (let a = 0; a < problem.count; a++) {
    for (const { from, gap } of problem.gapsInto[a]!) at = Math.max(at, starts[from]! + gap)
    starts[a] = at
    at += problem.duration[a]!
  }
  return { starts, makespan: Math.max(...starts.map((start, a) => start + problem.duration[a]!)) }
}

describe("exact search", () => {
  it("300 small projects from a bad schedule: the makespan that trying every order gives, proved", () => {
    for (let seed = 0; seed < 300; seed++) {
      const problem = smallProject(seed, 5 + (seed % 2))
      const project = compiled(problem)
      const best = oneAfterAnother(project)
      const { bound, found } = exactSchedule(project, { best, bound: 0, maxConflicts: 1e6, stop: never })
      const shortest = bruteShortest(problem)
      expect([seed, bound, (found ?? best).makespan]).toEqual([seed, shortest, shortest])
      if (!found) continue
      const starts = new Map(project.ids.map((id, a) => [id, found.starts[a]!]))
      expect(verifySchedule(problem, starts, found.makespan)).toEqual([])
    }
  })

  it("a search cut short gives a bound that the full search confirms, and the same each time", () => {
    for (let seed = 0; seed < 4; seed++) {
      const project = compiled(madeProject({ count: 16, complexity: 1.5, factor: 1, strength: 0.2 }, seed))
      const limits = { chance: seeded(seed), maxSchedules: 3, bound: 0, stop: never }
      const best = geneticSchedule(project, limits)
      const cut = () => exactSchedule(project, { best, bound: 0, maxConflicts: 100, stop: never })
      const full = exactSchedule(project, { best, bound: 0, maxConflicts: 1e6, stop: never })
      expect(cut()).toEqual(cut())
      expect(cut().bound).toBeLessThanOrEqual(full.bound)
      expect(full.bound).toBe((full.found ?? best).makespan)
    }
  })
})
