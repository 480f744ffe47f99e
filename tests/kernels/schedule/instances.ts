import type { ScheduleProblem } from "../../../src/kernels/schedule/problem.ts"
import { seeded } from "../../../src/kernels/schedule/seeded.ts"

/** What a made-up project is like. */
export interface ProjectShape {
  /** Activities without the dummy start and end. */
  count: number
  /** Network complexity: links for each activity, dummies included, without those that others imply. */
  complexity: number
  /** Resource factor: the part of the resources that an activity uses on average, 0 to 1. */
  factor: number
  /** Resource strength: 0 as scarce as can be, 1 never scarce in the earliest schedule. */
  strength: number
  resources?: number
  longest?: number
}

/**
 * A made-up project by the parameters of Kolisch, Sprecher and Drexl (Management Science 41, 1995):
 * durations 1 to 10, demands 1 to 10, at most three links into and out of each activity.
 */
export function madeProject(shape: ProjectShape, seed: number): ScheduleProblem {
  const chance = seeded(seed)
  const upTo = (most: number) => 1 + Math.floor(chance() * most)
  const { count, resources = 4, longest = 10 } = shape
  const durations = [0, ...Array.from({ length: count }, () => upTo(longest)), 0]
  const links = madeLinks(count, shape.complexity, chance)
  const demands = durations.map((duration) =>
    Array.from({ length: resources }, () => (duration > 0 && chance() < shape.factor ? upTo(10) : 0)),
  )
  const starts = earliestStarts(durations, links)
  const capacities = Array.from({ length: resources }, (_, r) => {
    const least = Math.max(1, ...demands.map((demand) => demand[r] ?? 0))
    const peak = Math.max(
      least,
      peakUse(
        starts,
        durations,
        demands.map((demand) => demand[r] ?? 0),
      ),
    )
    return least + Math.round(shape.strength * (peak - least))
  })
  const activities = durations.map((duration, a) => ({
    id: `${a}`,
    duration,
    demand: demands[a] ?? [],
    after: links.filter(([, to]) => to === a).map(([from]) => ({ from: `${from}` })),
  }))
  return { activities, capacities }
}

function madeLinks(count: number, complexity: number, chance: () => number): [number, number][] {
  const end = count + 1
  const into: Set<number>[] = Array.from({ length: end + 1 }, () => new Set())
  const out: Set<number>[] = Array.from({ length: end + 1 }, () => new Set())
  const link = (from: number, to: number) => {
    into[to]?.add(from)
    out[from]?.add(to)
  }
  const between = (low: number, high: number) => low + Math.floor(chance() * (high - low + 1))
  for (let a = 1; a <= Math.min(3, count); a++) link(0, a)
  for (let a = 4; a <= count; a++) {
    const open = Array.from({ length: a - 1 }, (_, n) => n + 1).filter((from) => (out[from]?.size ?? 0) < 3)
    link(open[between(0, open.length - 1)] ?? a - 1, a)
  }
  for (let a = 1; a <= count - 3; a++) {
    if (out[a]?.size === 0) link(a, between(a + 1, count))
  }
  for (let a = Math.max(1, count - 2); a <= count; a++) link(a, end)
  for (let a = 1; a <= count; a++) if (out[a]?.size === 0) link(a, end)
  const wanted = Math.round(complexity * (count + 2))
  const total = () => into.reduce((sum, set) => sum + set.size, 0)
  for (let tries = 0; total() < wanted && tries < 5000; tries++) {
    const from = between(1, count - 1)
    const to = between(from + 1, count)
    const full = (out[from]?.size ?? 3) >= 3 || (into[to]?.size ?? 3) >= 3
    if (!full && !reaches(out, from, to)) link(from, to)
  }
  return into.flatMap((set, to) => [...set].map((from): [number, number] => [from, to]))
}

function reaches(out: readonly Set<number>[], from: number, to: number): boolean {
  const seen = new Set([from])
  const open = [from]
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    if (at === to) return true
    for (const next of out[at] ?? []) {
      if (!seen.has(next)) open.push(next)
      seen.add(next)
    }
  }
  return false
}

function earliestStarts(
  durations: readonly number[],
  links: readonly (readonly [number, number])[],
): number[] {
  const starts = durations.map(() => 0)
  for (let a = 0; a < durations.length; a++) {
    for (const [from, to] of links) {
      if (to === a) starts[a] = Math.max(starts[a] ?? 0, (starts[from] ?? 0) + (durations[from] ?? 0))
    }
  }
  return starts
}

function peakUse(starts: readonly number[], durations: readonly number[], units: readonly number[]): number {
  return Math.max(
    0,
    ...starts.map((moment) =>
      starts.reduce((sum, start, a) => {
        const runs = start <= moment && moment < start + (durations[a] ?? 0)
        return sum + (runs ? (units[a] ?? 0) : 0)
      }, 0),
    ),
  )
}
