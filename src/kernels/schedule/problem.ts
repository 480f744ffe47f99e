import { Fault } from "../fault.ts"
import type { Activity } from "../network/activity.ts"
import { findCycle, inOrder } from "../network/activity.ts"

/** An activity that takes hold of resources while it runs; all times whole numbers. */
export interface ResourceActivity extends Activity {
  /** Units of each resource held from start to finish, in the order of the capacities. */
  demand: readonly number[]
  /** Not to start before this time. */
  release?: number
}

/** A project to be scheduled: its capacities are the units of each resource there at all times. */
export interface ScheduleProblem {
  activities: readonly ResourceActivity[]
  capacities: readonly number[]
}

/** Why no schedule at all exists: a ring of activities, or one that needs more of a resource than there is. */
export type Impossible = { kind: "ring"; ids: string[] } | { kind: "demand"; id: string; resource: number }

/** A link between activities by number: `to` starts at least `gap` after `from` starts. */
export interface StartGap {
  from: number
  to: number
  gap: number
}

/** A problem by numbers, activities in an order in which each stands behind all it waits for. */
export interface Compiled {
  ids: string[]
  count: number
  duration: Int32Array
  release: Int32Array
  capacities: Int32Array
  /** Demand of activity a for resource r at `a * capacities.length + r`. */
  demand: Int32Array
  /** For each activity the resources it takes any of. */
  resources: number[][]
  gaps: StartGap[]
  gapsInto: StartGap[][]
  gapsFrom: StartGap[][]
  /** Longest way from the start of the project to the activity's start. */
  head: Int32Array
  /** Longest way from the activity's start to the end of the project. */
  tail: Int32Array
}

/** Why a problem has no schedule at all, or null if it has one. */
export function impossibility({ activities, capacities }: ScheduleProblem): Impossible | null {
  const ids = findCycle(activities)
  if (ids) return { kind: "ring", ids }
  for (const { id, demand, duration } of activities) {
    const resource = demand.findIndex((units, index) => duration > 0 && units > (capacities[index] ?? 0))
    if (resource >= 0) return { kind: "demand", id, resource }
  }
  return null
}

/** A problem by numbers; a `Fault` if it has no schedule or holds times that are not whole. */
export function compiled(problem: ScheduleProblem): Compiled {
  const why = impossibility(problem)
  if (why) throw new Fault(`the problem has no schedule: ${JSON.stringify(why)}`)
  const activities = inOrder(problem.activities)
  const number = new Map(activities.map(({ id }, index) => [id, index]))
  const gaps = activities.flatMap((activity, to) =>
    activity.after.map((link) => {
      const from = number.get(link.from)!
      const held = link.kind === "start-start" ? 0 : activities[from]!.duration
      return { from, to, gap: held + (link.lag ?? 0) }
    }),
  )
  const width = problem.capacities.length
  const demand = new Int32Array(activities.length * width)
  activities.forEach((activity, index) => {
    if (activity.duration > 0) demand.set(activity.demand.slice(0, width), index * width)
  })
  const gapsInto = activities.map((_, index) => gaps.filter(({ to }) => to === index))
  const gapsFrom = activities.map((_, index) => gaps.filter(({ from }) => from === index))
  const duration = Int32Array.from(activities, (activity) => whole(activity.duration, activity.id))
  const release = Int32Array.from(activities, (activity) => whole(activity.release ?? 0, activity.id))
  for (const { gap, to } of gaps) whole(gap, activities[to]!.id)
  return {
    ids: activities.map(({ id }) => id),
    count: activities.length,
    duration,
    release,
    capacities: Int32Array.from(problem.capacities),
    demand,
    resources: activities.map((_, a) =>
      problem.capacities.map((_capacity, r) => r).filter((r) => (demand[a * width + r] ?? 0) > 0),
    ),
    gaps,
    gapsInto,
    gapsFrom,
    head: heads(release, gapsInto),
    tail: tails(duration, gapsFrom),
  }
}

function heads(release: Int32Array, gapsInto: readonly StartGap[][]): Int32Array {
  const head = Int32Array.from(release)
  gapsInto.forEach((links, to) => {
    for (const { from, gap } of links) head[to] = Math.max(head[to]!, head[from]! + gap)
  })
  return head
}

function tails(duration: Int32Array, gapsFrom: readonly StartGap[][]): Int32Array {
  const tail = Int32Array.from(duration)
  for (let from = duration.length - 1; from >= 0; from--) {
    for (const { to, gap } of gapsFrom[from]!) tail[from] = Math.max(tail[from]!, tail[to]! + gap)
  }
  return tail
}

function whole(value: number, id: string): number {
  if (!Number.isInteger(value)) throw new Fault(`activity ${id} has a time that is not whole: ${value}`)
  return value
}
