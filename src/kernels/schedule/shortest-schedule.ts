import { exactSchedule } from "./exact/exact-schedule.ts"
import { geneticSchedule } from "./genetic-schedule.ts"
import { lowerBounds } from "./lower-bounds.ts"
import type { ScheduleProblem } from "./problem.ts"
import { compiled } from "./problem.ts"
import { seeded } from "./seeded.ts"

/** How long to search. By counts alone the same problem gives the same schedule on every machine. */
export interface ScheduleLimits {
  seed?: number
  /** Schedules the genetic search may make in all; 20,000 if not given. */
  maxSchedules?: number
  /** Dead ends the exact search may meet; 20,000 if not given, 0 for no exact search. */
  maxConflicts?: number
  /** Asked now and then: how much of the time allowed is gone, 0 to 1. A clock belongs to the caller; without one, counts decide. */
  spent?: () => number
}

/** A shortest schedule as far as is known. */
export interface ShortestSchedule {
  /** Start of each activity by id, in the problem's unit of time from 0. */
  starts: Map<string, number>
  makespan: number
  /** No schedule is shorter than this: proved. */
  bound: number
  /** True only where makespan and bound meet. */
  proven: boolean
}

const SCHEDULES = 20_000
const CONFLICTS = 20_000
/** Share of the schedules made before the exact search: a good schedule narrows its ranges. */
const FIRST_SHARE = 0.25
/** Most schedules made before the exact search, for each activity: more seldom better one that it will better anyway. */
const FIRST_FOR_EACH = 150
/** Share of the time gone by the end of the exact search; the rest is left to better what it could not prove. */
const EXACT_UNTIL = 0.7

/**
 * The shortest schedule of a project under its links and capacities, and a proven lower bound:
 * quick bounds, a genetic search for a good schedule, an exact search that raises the bound until both meet,
 * and where it did not come so far, genetic search again.
 * @throws `Fault` if there is no schedule at all: ask `impossibility` first
 */
export function shortestSchedule(problem: ScheduleProblem, limits: ScheduleLimits = {}): ShortestSchedule {
  const { seed = 1, maxSchedules = SCHEDULES, maxConflicts = CONFLICTS, spent = () => 0 } = limits
  const project = compiled(problem)
  const chance = seeded(seed)
  const first = Math.min(Math.ceil(maxSchedules * FIRST_SHARE), FIRST_FOR_EACH * project.count)
  let bound = lowerBounds(project).best
  let best = geneticSchedule(project, {
    chance,
    maxSchedules: first,
    bound,
    stop: () => spent() >= EXACT_UNTIL,
  })
  if (maxConflicts > 0) {
    const proof = exactSchedule(project, { best, bound, maxConflicts, stop: () => spent() >= EXACT_UNTIL })
    bound = proof.bound
    best = proof.found ?? best
  }
  if (bound < best.makespan) {
    const rest = { chance, maxSchedules: maxSchedules - first, bound, stop: () => spent() >= 1, from: best }
    best = geneticSchedule(project, rest)
  }
  return {
    starts: new Map(project.ids.map((id, a) => [id, best.starts[a]!])),
    makespan: best.makespan,
    bound,
    proven: bound === best.makespan,
  }
}
