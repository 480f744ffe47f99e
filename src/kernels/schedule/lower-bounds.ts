import type { Compiled } from "./problem.ts"

/** Makespans that no schedule can be under, by how they are known. */
export interface LowerBounds {
  /** The longest chain of links. */
  criticalPath: number
  /** The work on one resource that must lie between some head and some tail, over its capacity. */
  resource: number
  /** Activities no two of which fit side by side, one after another between their least head and tail. */
  disjunctive: number
  /** The greatest of them. */
  best: number
}

interface Part {
  head: number
  after: number
  work: number
}

/** The quick lower bounds of a project; the exact search raises them further. */
export function lowerBounds(problem: Compiled): LowerBounds {
  let criticalPath = 0
  for (let a = 0; a < problem.count; a++)
    criticalPath = Math.max(criticalPath, problem.head[a]! + problem.tail[a]!)
  const resource = Math.max(0, ...Array.from(problem.capacities, (_, r) => resourceBound(problem, r)))
  const disjunctive = disjunctiveBound(problem)
  return { criticalPath, resource, disjunctive, best: Math.max(criticalPath, resource, disjunctive) }
}

function resourceBound(problem: Compiled, r: number): number {
  const width = problem.capacities.length
  const parts: Part[] = []
  for (let a = 0; a < problem.count; a++) {
    const work = problem.duration[a]! * problem.demand[a * width + r]!
    if (work > 0) parts.push(part(problem, a, work))
  }
  return between(parts, problem.capacities[r]!)
}

/** Starting from each activity in turn, gathers longest first those that fit beside none gathered so far. */
function disjunctiveBound(problem: Compiled): number {
  const byLength = Array.from({ length: problem.count }, (_, a) => a)
    .filter((a) => problem.duration[a]! > 0)
    .sort((a, b) => problem.duration[b]! - problem.duration[a]! || a - b)
  const linked = chains(problem)
  let best = 0
  for (const first of byLength) {
    const gathered = [first]
    for (const a of byLength) {
      if (a !== first && gathered.every((b) => isApart(problem, linked, a, b))) gathered.push(a)
    }
    best = Math.max(
      best,
      between(
        gathered.map((a) => part(problem, a, problem.duration[a]!)),
        1,
      ),
    )
  }
  return best
}

/** For every least head and least tail among the parts: head + work between them over the capacity + tail. */
function between(parts: readonly Part[], capacity: number): number {
  const byTail = [...parts].sort((a, b) => b.after - a.after)
  let best = 0
  for (const head of new Set(parts.map((each) => each.head))) {
    let work = 0
    for (const each of byTail) {
      if (each.head < head) continue
      work += each.work
      best = Math.max(best, head + Math.ceil(work / capacity) + each.after)
    }
  }
  return best
}

function part(problem: Compiled, a: number, work: number): Part {
  return { head: problem.head[a]!, after: problem.tail[a]! - problem.duration[a]!, work }
}

function isApart(problem: Compiled, linked: readonly Set<number>[], a: number, b: number): boolean {
  if (linked[a]!.has(b) || linked[b]!.has(a)) return true
  const width = problem.capacities.length
  return problem.resources[a]!.some(
    (r) => problem.demand[a * width + r]! + problem.demand[b * width + r]! > problem.capacities[r]!,
  )
}

/** For each activity those that cannot start before it has finished, by chains of links that wait for its finish. */
function chains(problem: Compiled): Set<number>[] {
  const linked = Array.from({ length: problem.count }, () => new Set<number>())
  for (let a = problem.count - 1; a >= 0; a--) {
    for (const { to, gap } of problem.gapsFrom[a]!) {
      if (gap < problem.duration[a]!) continue
      linked[a]!.add(to)
      for (const later of linked[to]!) if (gap >= problem.duration[a]!) linked[a]!.add(later)
    }
  }
  return linked
}
