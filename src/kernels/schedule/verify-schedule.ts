import type { ScheduleProblem } from "./problem.ts"

/**
 * What is wrong with a schedule, worked out afresh from the problem as given, moment by moment; empty if nothing is.
 * It shares no code with the search, so that a mistake there shows here.
 * @param starts start of each activity by id
 * @param makespan finish of all that is claimed
 * @returns one plain sentence for each breach
 */
export function verifySchedule(
  { activities, capacities }: ScheduleProblem,
  starts: ReadonlyMap<string, number>,
  makespan: number,
): string[] {
  const breaches: string[] = []
  const finishOf = new Map<string, number>()
  for (const { id, duration, release } of activities) {
    const start = starts.get(id)
    if (start === undefined || !Number.isInteger(start)) breaches.push(`${id} has no whole start`)
    else if (start < (release ?? 0)) breaches.push(`${id} starts at ${start}, before ${release ?? 0}`)
    finishOf.set(id, (start ?? 0) + duration)
  }
  for (const { id, after } of activities) {
    for (const { from, kind, lag } of after) {
      const base = kind === "start-start" ? starts.get(from) : finishOf.get(from)
      const least = (base ?? Number.NaN) + (lag ?? 0)
      if (!((starts.get(id) ?? Number.NaN) >= least))
        breaches.push(`${id} does not wait for ${from} until ${least}`)
    }
  }
  const last = Math.max(0, ...finishOf.values())
  if (last !== makespan) breaches.push(`all is finished at ${last}, not at ${makespan}`)
  for (let moment = 0; moment < last; moment++) {
    capacities.forEach((capacity, resource) => {
      let held = 0
      for (const { id, demand } of activities) {
        if (starts.get(id)! <= moment && moment < finishOf.get(id)!) held += demand[resource] ?? 0
      }
      if (held > capacity) breaches.push(`at ${moment} resource ${resource} holds ${held} of ${capacity}`)
    })
  }
  return breaches
}
