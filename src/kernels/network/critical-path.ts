import type { Activity, Link } from "./activity.ts"
import { inOrder } from "./activity.ts"

/** When an activity can and must run, and by how much it may slip; times from the start of the network at 0. */
export interface Times {
  id: string
  earliestStart: number
  earliestFinish: number
  latestStart: number
  latestFinish: number
  /** It may slip so far without moving the finish of all. */
  totalFloat: number
  /** It may slip so far without moving any other activity's earliest start. */
  freeFloat: number
}

/** A network worked through: its shortest duration, each activity's times in the order given, and a longest chain. */
export interface CriticalPath {
  duration: number
  times: Map<string, Times>
  /** One chain of activities without float from the first to the last to finish, in order. */
  chain: string[]
}

/** Floats nearer to nothing than this are nothing: sums of decimal durations leave such dust. */
const DUST = 1e-9

/**
 * Forward and backward pass over an activity-on-node network with lags (critical path method).
 * Earliest start = greatest of what it waits for; latest finish = least of what waits for it, at the end the duration of all.
 * @throws `Fault` on a ring or an unknown id
 */
export function criticalPath(activities: readonly Activity[]): CriticalPath {
  const order = inOrder(activities)
  const finish = new Map<string, number>()
  const start = new Map<string, number>()
  for (const activity of order) {
    const early = Math.max(0, ...activity.after.map((link) => earliestBy(link, start, finish)))
    start.set(activity.id, early)
    finish.set(activity.id, early + activity.duration)
  }
  const duration = Math.max(0, ...order.map(({ id, duration }) => start.get(id)! + duration))
  const { latest, free } = backwardPass(order, start, duration)
  const times = new Map(
    activities.map((activity) => [activity.id, timesOf(activity, start, latest, free)] as const),
  )
  return { duration, times, chain: criticalChain(activities, times, duration) }
}

/** True if an activity has no float: its delay delays all. */
export function isCritical(times: Times): boolean {
  return Math.abs(times.totalFloat) < DUST
}

/** Does a link hold its follower exactly where it starts earliest? Such links make the reason chains. */
export function isBinding(link: Link, follower: Times, before: Times): boolean {
  return Math.abs(linkedFrom(link, before) + (link.lag ?? 0) - follower.earliestStart) < DUST
}

function earliestBy(
  link: Link,
  start: ReadonlyMap<string, number>,
  finish: ReadonlyMap<string, number>,
): number {
  return (link.kind === "start-start" ? start : finish).get(link.from)! + (link.lag ?? 0)
}

function backwardPass(order: readonly Activity[], start: ReadonlyMap<string, number>, duration: number) {
  const latest = new Map<string, number>(order.map((activity) => [activity.id, duration - activity.duration]))
  const free = new Map<string, number>(
    order.map((activity) => [activity.id, duration - activity.duration - start.get(activity.id)!]),
  )
  const durations = new Map(order.map((activity) => [activity.id, activity.duration]))
  for (const follower of [...order].reverse()) {
    for (const link of follower.after) {
      const gap = (link.lag ?? 0) + (link.kind === "start-start" ? 0 : durations.get(link.from)!)
      latest.set(link.from, Math.min(latest.get(link.from)!, latest.get(follower.id)! - gap))
      const slack = start.get(follower.id)! - gap - start.get(link.from)!
      free.set(link.from, Math.min(free.get(link.from)!, slack))
    }
  }
  return { latest, free }
}

function timesOf(
  { id, duration }: Activity,
  start: ReadonlyMap<string, number>,
  latest: ReadonlyMap<string, number>,
  free: ReadonlyMap<string, number>,
): Times {
  const early = start.get(id)!
  const late = latest.get(id)!
  return {
    id,
    earliestStart: early,
    earliestFinish: early + duration,
    latestStart: late,
    latestFinish: late + duration,
    totalFloat: withoutDust(late - early),
    freeFloat: withoutDust(free.get(id)!),
  }
}

function criticalChain(activities: readonly Activity[], times: ReadonlyMap<string, Times>, duration: number) {
  const byId = new Map(activities.map((activity) => [activity.id, activity]))
  const chain: string[] = []
  let at = activities.find(({ id }) => Math.abs(times.get(id)!.earliestFinish - duration) < DUST)
  while (at) {
    chain.unshift(at.id)
    const here = times.get(at.id)!
    const link = at.after.find((each) => {
      const before = times.get(each.from)!
      return isCritical(before) && isBinding(each, here, before)
    })
    at = link && byId.get(link.from)
  }
  return chain
}

function linkedFrom(link: Link, before: Times): number {
  return link.kind === "start-start" ? before.earliestStart : before.earliestFinish
}

function withoutDust(value: number): number {
  return Math.abs(value) < DUST ? 0 : value
}
