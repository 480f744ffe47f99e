import type { ScheduleProblem } from "../../../src/kernels/schedule/problem.ts"
import { seeded } from "../../../src/kernels/schedule/seeded.ts"

/**
 * The least makespan by trying every order of the activities, each placed as early as it can be.
 * With least waits only, one of these orders gives a shortest schedule (Kolisch, European Journal of Operational Research 90, 1996).
 * For a handful of activities; written apart from the search it checks.
 */
export function bruteShortest({ activities, capacities }: ScheduleProblem): number {
  let best = Number.POSITIVE_INFINITY
  const starts = new Map<string, number>()
  const fits = (index: number, start: number) => {
    const wanted = activities[index]!
    for (let moment = start; moment < start + wanted.duration; moment++) {
      for (let r = 0; r < capacities.length; r++) {
        let held = wanted.demand[r] ?? 0
        for (const other of activities) {
          const at = starts.get(other.id)
          if (at !== undefined && at <= moment && moment < at + other.duration) held += other.demand[r] ?? 0
        }
        if (held > capacities[r]!) return false
      }
    }
    return true
  }
  const place = (end: number) => {
    if (end >= best) return
    if (starts.size === activities.length) {
      best = end
      return
    }
    activities.forEach((activity, index) => {
      if (starts.has(activity.id) || activity.after.some(({ from }) => !starts.has(from))) return
      let start = activity.release ?? 0
      for (const { from, kind, lag } of activity.after) {
        const before = activities.find(({ id }) => id === from)!
        const held = kind === "start-start" ? 0 : before.duration
        start = Math.max(start, starts.get(from)! + held + (lag ?? 0))
      }
      while (!fits(index, start)) start++
      starts.set(activity.id, start)
      place(Math.max(end, start + activity.duration))
      starts.delete(activity.id)
    })
  }
  place(0)
  return best
}

/** A small project by chance with every kind of link: lags, overlaps, starts after starts, and releases. */
export function smallProject(seed: number, count = 6): ScheduleProblem {
  const chance = seeded(seed)
  const upTo = (most: number) => Math.floor(chance() * (most + 1))
  const capacities = [2 + upTo(3), 2 + upTo(3)]
  const activities = Array.from({ length: count }, (_, a) => ({
    id: `a${a}`,
    duration: upTo(5),
    demand: capacities.map((capacity) => upTo(capacity)),
    release: upTo(9) === 0 ? upTo(8) : 0,
    after: Array.from({ length: a }, (_, from) => from)
      .filter(() => chance() < 0.25)
      .map((from) => ({
        from: `a${from}`,
        kind: chance() < 0.3 ? ("start-start" as const) : ("finish-start" as const),
        lag: chance() < 0.4 ? upTo(5) - 2 : 0,
      })),
  }))
  return { activities, capacities }
}
