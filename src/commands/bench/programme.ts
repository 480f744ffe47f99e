import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { z } from "zod"
import { Fault } from "../../kernels/fault.ts"
import type { ScheduleProblem } from "../../kernels/schedule/problem.ts"
import type { ShortestSchedule } from "../../kernels/schedule/shortest-schedule.ts"
import { shortestSchedule } from "../../kernels/schedule/shortest-schedule.ts"
import { verifySchedule } from "../../kernels/schedule/verify-schedule.ts"

/** One published project: finish-to-start links only; other keys of the file (source, known optimum) are not looked at. */
const Instance = z.object({
  name: z.string(),
  capacities: z.array(z.int().nonnegative()),
  jobs: z.array(
    z.object({
      id: z.int(),
      duration: z.int().nonnegative(),
      demand: z.array(z.int().nonnegative()),
      successors: z.array(z.int()),
    }),
  ),
})

/** What to measure: every JSON file of a folder, each for at most so many seconds, printed line by line. */
export interface ProgrammeBench {
  instances: string
  limitSeconds: number
  print: (line: string) => void
}

/** The part of the limit that the search may take; the rest is for reading, checking and the last step of the search. */
const SHARE_FOR_SEARCH = 0.9
/** Neither count ends a search that the clock is there to end. */
const UNLIMITED = Number.MAX_SAFE_INTEGER

/**
 * Measures the scheduling kernel: one JSON line `{name, value, bound, proven, ms}` for each project, then a line of text.
 * @throws `Fault` if a schedule does not stand up to the independent verifier, or a bound is above its value
 */
export function benchProgramme({ instances, limitSeconds, print }: ProgrammeBench): void {
  const files = readdirSync(instances).filter((name) => name.endsWith(".json"))
  let proved = 0
  let gaps = 0
  for (const file of files.sort()) {
    const { name, ...project } = Instance.parse(JSON.parse(readFileSync(join(instances, file), "utf8")))
    const problem = problemOf(project)
    const start = performance.now()
    const limit = limitSeconds * 1000 * SHARE_FOR_SEARCH
    const result = shortestSchedule(problem, {
      maxSchedules: UNLIMITED,
      maxConflicts: UNLIMITED,
      spent: () => (performance.now() - start) / limit,
    })
    const ms = Math.round(performance.now() - start)
    checked(name, problem, result)
    const { makespan: value, bound, proven } = result
    print(JSON.stringify({ name, value, bound, proven, ms }))
    proved += proven ? 1 : 0
    gaps += bound > 0 ? (value - bound) / bound : 0
  }
  const count = Math.max(1, files.length)
  const gap = ((100 * gaps) / count).toFixed(2)
  print(`${files.length} projects, ${proved} proven shortest, mean gap to the proven bound ${gap} %`)
}

function problemOf({ capacities, jobs }: Omit<z.infer<typeof Instance>, "name">): ScheduleProblem {
  const after = new Map(jobs.map(({ id }) => [id, [] as { from: string }[]]))
  for (const { id, successors } of jobs) {
    for (const next of successors) after.get(next)?.push({ from: `${id}` })
  }
  return {
    capacities,
    activities: jobs.map(({ id, duration, demand }) => ({
      id: `${id}`,
      duration,
      demand,
      after: after.get(id) ?? [],
    })),
  }
}

function checked(
  name: string,
  problem: ScheduleProblem,
  { starts, makespan, bound }: ShortestSchedule,
): void {
  const breaches = verifySchedule(problem, starts, makespan)
  if (breaches.length > 0) throw new Fault(`the schedule of ${name} does not hold: ${breaches.join("; ")}`)
  if (bound > makespan) throw new Fault(`the bound ${bound} of ${name} is above its value ${makespan}`)
}
