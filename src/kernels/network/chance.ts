import type { Link } from "./activity.ts"
import { criticalPath, isBinding, isCritical } from "./critical-path.ts"

/** Three guesses of one duration: if all goes well, most likely, if much goes wrong. */
export interface ThreePoint {
  optimistic: number
  likely: number
  pessimistic: number
}

/** An activity whose duration is guessed at three points. */
export interface GuessedActivity extends ThreePoint {
  id: string
  after: readonly Link[]
}

/** Expected duration of a three-point guess: (o + 4m + p) / 6 (PERT, Malcolm et al., Operations Research 7, 1959). */
export function expectedDuration({ optimistic, likely, pessimistic }: ThreePoint): number {
  return (optimistic + 4 * likely + pessimistic) / 6
}

/** Variance of a three-point guess: ((p − o) / 6)² (same source). */
export function durationVariance({ optimistic, pessimistic }: ThreePoint): number {
  return ((pessimistic - optimistic) / 6) ** 2
}

/**
 * Expected duration of a network of guesses and the variance along its critical chain
 * (of several chains equally long, the one that varies most).
 */
export function networkChance(activities: readonly GuessedActivity[]): { mean: number; variance: number } {
  const network = activities.map((each) => ({
    id: each.id,
    duration: expectedDuration(each),
    after: each.after,
  }))
  const { duration, times } = criticalPath(network)
  const byId = new Map(activities.map((each) => [each.id, each]))
  const known = new Map<string, number>()
  const varianceTo = (id: string): number => {
    const found = known.get(id)
    if (found !== undefined) return found
    const activity = byId.get(id)!
    const before = activity.after
      .filter(
        (link) => isCritical(times.get(link.from)!) && isBinding(link, times.get(id)!, times.get(link.from)!),
      )
      .map((link) => varianceTo(link.from))
    const variance = durationVariance(activity) + Math.max(0, ...before)
    known.set(id, variance)
    return variance
  }
  const critical = activities.filter(({ id }) => isCritical(times.get(id)!))
  return { mean: duration, variance: Math.max(0, ...critical.map(({ id }) => varianceTo(id))) }
}

/** Chance, 0 to 1, that a duration with normal spread is at most `limit`; without spread it is 0 or 1. */
export function chanceWithin(limit: number, mean: number, variance: number): number {
  if (variance === 0) return limit >= mean ? 1 : 0
  return normalBelow((limit - mean) / Math.sqrt(variance))
}

/** Beyond this many standard deviations the chance is 0 or 1 to double precision. */
const TAIL = 8

/** Normal distribution function by Marsaglia's series (Journal of Statistical Software 11(4), 2004), good to about 1e-15. */
export function normalBelow(z: number): number {
  if (z > TAIL) return 1
  if (z < -TAIL) return 0
  let sum = z
  let term = z
  for (let odd = 3, last = 0; sum !== last; odd += 2) {
    last = sum
    term = (term * z * z) / odd
    sum += term
  }
  return 0.5 + (sum * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI)
}
