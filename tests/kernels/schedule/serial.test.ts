import { describe, expect, it } from "vitest"
import {
  listByFinishBackward,
  listByStart,
  sampledList,
} from "../../../src/kernels/schedule/activity-list.ts"
import { compiled } from "../../../src/kernels/schedule/problem.ts"
import { seeded } from "../../../src/kernels/schedule/seeded.ts"
import { scheduleBackward, scheduleForward, workspace } from "../../../src/kernels/schedule/serial.ts"
import { verifySchedule } from "../../../src/kernels/schedule/verify-schedule.ts"
import { smallProject } from "./brute-force.ts"
import { madeProject } from "./instances.ts"

describe("serial schedules", () => {
  it("places each activity of the list as early as it can be: worked by hand", () => {
    // one crew of 2; a holds 2 for 3; b holds 1 for 2; c holds 1 for 4 after b
    const project = compiled({
      activities: [
        { id: "a", duration: 3, demand: [2], after: [] },
        { id: "b", duration: 2, demand: [1], after: [] },
        { id: "c", duration: 4, demand: [1], after: [{ from: "b" }] },
      ],
      capacities: [2],
    })
    const starts = new Int32Array(3)
    // a 0–3, b 3–5, c 5–9; b first: b 0–2, a 2–5, c 5–9; c before a: b 0–2, c 2–6, a 6–9
    expect(scheduleForward(workspace(project), Int32Array.of(0, 1, 2), starts)).toBe(9)
    expect([...starts]).toEqual([0, 3, 5])
    expect(scheduleForward(workspace(project), Int32Array.of(1, 2, 0), starts)).toBe(9)
    expect([...starts]).toEqual([6, 0, 2])
    // pushed to the right with the end at 10: a 7–10, c 3–7, b 1–3
    expect(scheduleBackward(workspace(project), Int32Array.of(0, 2, 1), 10, starts)).toBe(true)
    expect([...starts]).toEqual([7, 1, 3])
  })

  it("200 projects, forward and justified: no breach, never longer", () => {
    for (let seed = 0; seed < 200; seed++) {
      const problem =
        seed % 2 === 0
          ? smallProject(seed, 12)
          : madeProject({ count: 20, complexity: 1.8, factor: 0.75, strength: 0.2 }, seed)
      const project = compiled(problem)
      const space = workspace(project)
      const asMap = (starts: Int32Array) => new Map(project.ids.map((id, a) => [id, starts[a]!]))
      const starts = new Int32Array(project.count)
      const makespan = scheduleForward(space, sampledList(project, seeded(seed)), starts)
      expect(verifySchedule(problem, asMap(starts), makespan)).toEqual([])
      const right = new Int32Array(project.count)
      if (!scheduleBackward(space, listByFinishBackward(project, starts), makespan, right)) continue
      const left = new Int32Array(project.count)
      const shorter = scheduleForward(space, listByStart(project, right), left)
      expect(verifySchedule(problem, asMap(left), shorter)).toEqual([])
      if (seed % 2 === 1) expect(shorter).toBeLessThanOrEqual(makespan)
    }
  })
})
