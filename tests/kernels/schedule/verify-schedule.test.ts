import { describe, expect, it } from "vitest"
import type { ScheduleProblem } from "../../../src/kernels/schedule/problem.ts"
import { verifySchedule } from "../../../src/kernels/schedule/verify-schedule.ts"

const project: ScheduleProblem = {
  activities: [
    { id: "a", duration: 2, demand: [1], after: [], release: 1 },
    { id: "b", duration: 2, demand: [2], after: [] },
    { id: "c", duration: 3, demand: [1], after: [{ from: "a", lag: 1 }] },
    { id: "d", duration: 1, demand: [0], after: [{ from: "c", kind: "start-start", lag: 2 }] },
  ],
  capacities: [2],
}

function breaches(starts: Record<string, number>, makespan: number): string[] {
  return verifySchedule(project, new Map(Object.entries(starts)), makespan)
}

describe("verifier of schedules", () => {
  it("passes a right schedule", () => {
    // b 0–2; a 2–4; c waits 1 after a: 5–8; d 2 after c's start: 7–8
    expect(breaches({ b: 0, a: 2, c: 5, d: 7 }, 8)).toEqual([])
  })

  it.each([
    ["a link too short", { b: 0, a: 2, c: 4, d: 7 }, 8, "c does not wait for a until 5"],
    ["a start too near a start", { b: 0, a: 2, c: 5, d: 6 }, 8, "d does not wait for c until 7"],
    ["too much held", { b: 0, a: 1, c: 4, d: 6 }, 7, "at 1 resource 0 holds 3 of 2"],
    ["a start before its release", { b: 2, a: 0, c: 4, d: 6 }, 7, "a starts at 0, before 1"],
    ["a wrong makespan", { b: 0, a: 2, c: 5, d: 7 }, 7, "all is finished at 8, not at 7"],
    ["an activity left out", { b: 0, a: 2, c: 5 }, 8, "d has no whole start"],
    ["a start between whole times", { b: 0, a: 2, c: 5, d: 7.5 }, 8.5, "d has no whole start"],
  ])("finds %s", (_what, starts, makespan, breach) => {
    expect(breaches(starts, makespan)).toContain(breach)
  })
})
