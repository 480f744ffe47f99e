import type { Compiled } from "./problem.ts"

/** The room in which schedules of one problem are made, used again for each. */
export interface Workspace {
  problem: Compiled
  /** Units of each resource in use at each time, resource by resource. */
  usage: Int32Array
  horizon: number
}

/** Room to schedule in: long enough for every activity one after another with all its waits. */
export function workspace(problem: Compiled): Workspace {
  let horizon = 1 + Math.max(0, ...problem.release)
  for (let a = 0; a < problem.count; a++) {
    const gaps = problem.gapsInto[a]!.map(({ from, gap }) => Math.max(0, gap - problem.duration[from]!))
    horizon += problem.duration[a]! + Math.max(0, ...gaps)
  }
  return { problem, usage: new Int32Array(horizon * problem.capacities.length), horizon }
}

/**
 * Serial schedule generation: takes activities in the order of the list, each as early as links and resources allow.
 * @param list activities by number, each behind all it waits for
 * @param starts is filled with the start of each
 * @returns the makespan
 */
export function scheduleForward(space: Workspace, list: Int32Array, starts: Int32Array): number {
  const { problem } = space
  const { duration, release, gapsInto } = problem
  space.usage.fill(0)
  let makespan = 0
  for (const activity of list) {
    let earliest = release[activity]!
    for (const { from, gap } of gapsInto[activity]!) {
      const ready = starts[from]! + gap
      if (ready > earliest) earliest = ready
    }
    const start = firstFit(space, activity, earliest)
    starts[activity] = start
    take(space, activity, start)
    const finish = start + duration[activity]!
    if (finish > makespan) makespan = finish
  }
  return makespan
}

/**
 * Justification to the right: the last to finish first, each as late as links, resources and the makespan allow
 * (Valls, Ballestín and Quintanilla, European Journal of Operational Research 165, 2005).
 * @param list activities by number in the order in which they are to be placed, each before all it waits for
 * @param starts is filled with the start of each, measured from the same zero
 * @returns false if the list leaves no room for one of them (then `starts` is not to be used)
 */
export function scheduleBackward(
  space: Workspace,
  list: Int32Array,
  end: number,
  starts: Int32Array,
): boolean {
  const { problem } = space
  const { duration, gapsFrom } = problem
  space.usage.fill(0)
  for (const activity of list) {
    let latest = end - duration[activity]!
    for (const { to, gap } of gapsFrom[activity]!) {
      const must = starts[to]! - gap
      if (must < latest) latest = must
    }
    const start = lastFit(space, activity, latest)
    if (start < 0) return false
    starts[activity] = start
    take(space, activity, start)
  }
  return true
}

/** The first start, not before `from`, at which all the activity needs is free through its duration. */
function firstFit({ problem, usage, horizon }: Workspace, activity: number, from: number): number {
  const { capacities, demand, resources } = problem
  const length = problem.duration[activity]!
  const width = capacities.length
  let start = from
  for (let time = start; time < start + length; time++) {
    for (const r of resources[activity]!) {
      if (usage[r * horizon + time]! + demand[activity * width + r]! > capacities[r]!) {
        start = time + 1
        break
      }
    }
  }
  return start
}

/** The last start, not after `from`, at which all the activity needs is free through its duration. */
function lastFit({ problem, usage, horizon }: Workspace, activity: number, from: number): number {
  const { capacities, demand, resources } = problem
  const length = problem.duration[activity]!
  const width = capacities.length
  let start = from
  for (let time = start + length - 1; time >= start && start >= 0; time--) {
    for (const r of resources[activity]!) {
      if (usage[r * horizon + time]! + demand[activity * width + r]! > capacities[r]!) {
        start = time - length
        break
      }
    }
  }
  return start
}

function take({ problem, usage, horizon }: Workspace, activity: number, start: number): void {
  const { demand, resources } = problem
  const width = problem.capacities.length
  const finish = start + problem.duration[activity]!
  for (const r of resources[activity]!) {
    const units = demand[activity * width + r]!
    for (let at = r * horizon + start; at < r * horizon + finish; at++) usage[at] = usage[at]! + units
  }
}
