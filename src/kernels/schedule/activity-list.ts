import type { Compiled, StartGap } from "./problem.ts"
import type { Seeded } from "./seeded.ts"

/** The first `order` of those ready, again and again: a list in which each activity stands behind all it waits for. */
export function listBy(problem: Compiled, pick: (ready: readonly number[]) => number): Int32Array {
  const waits = Int32Array.from(problem.gapsInto, (links) => links.length)
  const ready: number[] = []
  for (let a = 0; a < problem.count; a++) if (waits[a] === 0) ready.push(a)
  const list = new Int32Array(problem.count)
  for (let place = 0; place < problem.count; place++) {
    const at = pick(ready)
    const activity = ready[at]!
    ready[at] = ready[ready.length - 1]!
    ready.pop()
    list[place] = activity
    for (const { to } of problem.gapsFrom[activity]!) {
      waits[to] = waits[to]! - 1
      if (waits[to] === 0) ready.push(to)
    }
  }
  return list
}

/** The list that always takes the activity with the longest way still to go (latest finish time rule); ties by number. */
export function longestTailList(problem: Compiled): Int32Array {
  return listBy(problem, (ready) => {
    let best = 0
    for (let at = 1; at < ready.length; at++) {
      const more = problem.tail[ready[at]!]! - problem.tail[ready[best]!]!
      if (more > 0 || (more === 0 && ready[at]! < ready[best]!)) best = at
    }
    return best
  })
}

/** A list by chance, leaning to activities with a long way to go by how much they would be regretted (regret-based biased sampling, Drexl 1991). */
export function sampledList(problem: Compiled, chance: Seeded): Int32Array {
  return listBy(problem, (ready) => {
    let least = Number.POSITIVE_INFINITY
    for (const activity of ready) least = Math.min(least, problem.tail[activity]!)
    let sum = 0
    for (const activity of ready) sum += problem.tail[activity]! - least + 1
    let mark = chance() * sum
    for (let at = 0; at < ready.length; at++) {
      mark -= problem.tail[ready[at]!]! - least + 1
      if (mark < 0) return at
    }
    return ready.length - 1
  })
}

/** The activities by when they start, ties by number; each still behind all it waits for, overlaps included. */
export function listByStart(problem: Compiled, starts: Int32Array): Int32Array {
  const list = sorted(starts)
  return problem.gaps.some(isBackward) ? repaired(problem, list) : list
}

/** The activities by when they finish, the last first; each still before all it waits for. */
export function listByFinishBackward(problem: Compiled, starts: Int32Array): Int32Array {
  const { duration, gaps } = problem
  const finishes = new Int32Array(starts.length)
  for (let a = 0; a < starts.length; a++) finishes[a] = starts[a]! + duration[a]!
  const list = sorted(finishes)
  const overlapping = gaps.some(({ from, gap }) => gap < duration[from]!)
  return (overlapping ? repaired(problem, list) : list).reverse()
}

function isBackward({ gap }: StartGap): boolean {
  return gap < 0
}

/** Activities by their key, ties by number: a counting sort, for keys that are small whole numbers from 0 on. */
function sorted(keys: Int32Array): Int32Array {
  let most = 0
  for (let a = 0; a < keys.length; a++) if (keys[a]! > most) most = keys[a]!
  const place = new Int32Array(most + 2)
  for (let a = 0; a < keys.length; a++) place[keys[a]! + 1] = place[keys[a]! + 1]! + 1
  for (let key = 1; key <= most; key++) place[key] = place[key]! + place[key - 1]!
  const list = new Int32Array(keys.length)
  for (let a = 0; a < keys.length; a++) {
    list[place[keys[a]!]!] = a
    place[keys[a]!] = place[keys[a]!]! + 1
  }
  return list
}

/** The list with each activity moved behind all it waits for, otherwise in the same order. */
function repaired(problem: Compiled, list: Int32Array): Int32Array {
  const place = new Int32Array(problem.count)
  list.forEach((activity, at) => {
    place[activity] = at
  })
  return listBy(problem, (ready) => {
    let best = 0
    for (let at = 1; at < ready.length; at++) if (place[ready[at]!]! < place[ready[best]!]!) best = at
    return best
  })
}
