import { Fault } from "../fault.ts"

/** How one activity waits for another: after its finish, or after its start. */
export type LinkKind = "finish-start" | "start-start"

/** What must come before: the id, how, and the time that must pass between (0 if not given; negative overlaps). */
export interface Link {
  from: string
  kind?: LinkKind
  lag?: number
}

/** One activity of a network: duration in the network's own unit of time. */
export interface Activity {
  id: string
  duration: number
  after: readonly Link[]
}

/**
 * The ids of a ring of activities that wait for one another, in order: each comes before the next and the last
 * before the first; null if there is none. Of several rings, one met first in the order given.
 */
export function findCycle(activities: readonly Activity[]): string[] | null {
  const byId = new Map(activities.map((activity) => [activity.id, activity]))
  const done = new Set<string>()
  for (const { id } of activities) {
    const ring = ringFrom(id, byId, done)
    if (ring) return ring
  }
  return null
}

/**
 * The activities so ordered that each stands behind all it waits for; otherwise in the order given.
 * @throws `Fault` on a ring, an unknown id or an id twice: ask `findCycle` first
 */
export function inOrder<A extends Activity>(activities: readonly A[]): A[] {
  const byId = new Map(activities.map((activity) => [activity.id, activity]))
  if (byId.size !== activities.length) throw new Fault("an activity's id stands twice in the network")
  const ring = findCycle(activities)
  if (ring) throw new Fault(`activities wait for one another in a ring: ${ring.join(" → ")}`)
  const placed = new Set<string>()
  const order: A[] = []
  const place = (activity: A): void => {
    if (placed.has(activity.id)) return
    placed.add(activity.id)
    for (const { from } of activity.after) {
      const before = byId.get(from)
      if (!before) throw new Fault(`activity ${activity.id} waits for ${from}, which is not in the network`)
      place(before)
    }
    order.push(activity)
  }
  for (const activity of activities) place(activity)
  return order
}

/** Walks back along what each waits for, without recursion; `done` are ids from which no ring is reached. */
function ringFrom(start: string, byId: ReadonlyMap<string, Activity>, done: Set<string>): string[] | null {
  const trail: { id: string; next: number }[] = []
  const onTrail = new Set<string>()
  const enter = (id: string): void => {
    trail.push({ id, next: 0 })
    onTrail.add(id)
  }
  if (!done.has(start)) enter(start)
  for (let top = trail.at(-1); top; top = trail.at(-1)) {
    const link = byId.get(top.id)?.after[top.next++]
    if (!link) {
      done.add(top.id)
      onTrail.delete(top.id)
      trail.pop()
    } else if (onTrail.has(link.from)) {
      const ids = trail.map(({ id }) => id)
      return ids.slice(ids.indexOf(link.from)).reverse()
    } else if (!done.has(link.from) && byId.has(link.from)) enter(link.from)
  }
  return null
}
