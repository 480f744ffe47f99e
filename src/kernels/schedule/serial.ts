import type { Compiled, StartGap } from "./problem.ts"

/** The room in which schedules of one problem are made, used again for each; links and needs laid out flat for speed. */
export interface Workspace {
  problem: Compiled
  /** Links into and out of each activity: those of activity a stand from `first[a]` to `first[a + 1]`. */
  into: FlatLinks
  from: FlatLinks
  /** Units of resource r in use at a time, at `time * width + r`. */
  usage: Int32Array
  /** Most units that may be in use for activity a still to run, at `a * width + r`. */
  room: Int32Array
  horizon: number
}

interface FlatLinks {
  first: Int32Array
  other: Int32Array
  gap: Int32Array
}

/** Room to schedule in: long enough for every activity one after another with all its waits. */
export function workspace(problem: Compiled): Workspace {
  let horizon = 1 + Math.max(0, ...problem.release)
  for (let a = 0; a < problem.count; a++) {
    const gaps = problem.gapsInto[a]!.map(({ from, gap }) => Math.max(0, gap - problem.duration[from]!))
    horizon += problem.duration[a]! + Math.max(0, ...gaps)
  }
  const width = problem.capacities.length
  return {
    problem,
    into: flat(problem.gapsInto, ({ from }) => from),
    from: flat(problem.gapsFrom, ({ to }) => to),
    usage: new Int32Array(horizon * width),
    room: problem.demand.map((units, at) => problem.capacities[at % width]! - units),
    horizon,
  }
}

/**
 * Serial schedule generation: takes activities in the order of the list, each as early as links and resources allow.
 * @param list activities by number, each behind all it waits for
 * @param starts is filled with the start of each
 * @returns the makespan
 */
export function scheduleForward(space: Workspace, list: Int32Array, starts: Int32Array): number {
  const { duration, release } = space.problem
  const { first, other, gap } = space.into
  space.usage.fill(0)
  let makespan = 0
  for (let place = 0; place < list.length; place++) {
    const activity = list[place]!
    let earliest = release[activity]!
    for (let link = first[activity]!; link < first[activity + 1]!; link++) {
      const ready = starts[other[link]!]! + gap[link]!
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
  const { duration } = space.problem
  const { first, other, gap } = space.from
  space.usage.fill(0)
  for (let place = 0; place < list.length; place++) {
    const activity = list[place]!
    let latest = end - duration[activity]!
    for (let link = first[activity]!; link < first[activity + 1]!; link++) {
      const must = starts[other[link]!]! - gap[link]!
      if (must < latest) latest = must
    }
    const start = lastFit(space, activity, latest)
    if (start < 0) return false
    starts[activity] = start
    take(space, activity, start)
  }
  return true
}

/** The first start, not before `from`, at which all the activity needs is free through its duration; looks at the far end first. */
function firstFit(space: Workspace, activity: number, from: number): number {
  const length = space.problem.duration[activity]!
  let start = from
  let free = start
  for (let time = start + length - 1; time >= free; time--) {
    if (!isFull(space, activity, time)) continue
    free = start + length
    start = time + 1
    time = start + length
  }
  return start
}

/** The last start, not after `from`, at which all the activity needs is free through its duration; negative if there is none. */
function lastFit(space: Workspace, activity: number, from: number): number {
  const length = space.problem.duration[activity]!
  let start = from
  let free = start + length
  for (let time = start; time < free && start >= 0; time++) {
    if (!isFull(space, activity, time)) continue
    free = start
    start = time - length
    time = start - 1
  }
  return start
}

function isFull({ problem, usage, room }: Workspace, activity: number, time: number): boolean {
  const width = problem.capacities.length
  const need = activity * width
  const used = time * width
  for (let r = 0; r < width; r++) if (usage[used + r]! > room[need + r]!) return true
  return false
}

function take({ problem, usage }: Workspace, activity: number, start: number): void {
  const { demand, duration, capacities } = problem
  const width = capacities.length
  const need = activity * width
  const end = (start + duration[activity]!) * width
  for (let used = start * width; used < end; used += width) {
    for (let r = 0; r < width; r++) usage[used + r] = usage[used + r]! + demand[need + r]!
  }
}

function flat(links: readonly StartGap[][], otherEnd: (link: StartGap) => number): FlatLinks {
  const first = new Int32Array(links.length + 1)
  links.forEach((each, a) => {
    first[a + 1] = first[a]! + each.length
  })
  const all = links.flat()
  return { first, other: Int32Array.from(all, otherEnd), gap: Int32Array.from(all, ({ gap }) => gap) }
}
