import type { Found } from "../genetic-schedule.ts"
import type { Compiled } from "../problem.ts"
import type { Key, Literal } from "./bound-trail.ts"
import { ConflictAnalysis } from "./conflict.ts"
import { Propagation } from "./propagation.ts"

/** How far an exact search may go. */
export interface ExactLimits {
  /** A schedule at hand: only shorter ones are sought. */
  best: Found
  /** A makespan that none can be under. */
  bound: number
  maxConflicts: number
  stop: () => boolean
}

/** What an exact search proved: no schedule is shorter than `bound`; `found` is as short as that, or null. */
export interface Proof {
  bound: number
  found: Found | null
}

/** How fast the part a bound had in earlier conflicts is forgotten, a conflict at a time. */
const ACTIVITY_DECAY = 0.95
/** Activities are scaled down beyond this, well within double precision's range. */
const TOO_LARGE = 1e100
/** Conflicts of the shortest run between restarts (multiplied by Luby's sequence). */
const RUN = 100
/** Dead ends between two questions whether the time is up. */
const CONFLICTS_BETWEEN_ASKING = 64
/** Clauses kept before the first clearing, and how many more after each. */
const CLAUSES = 4000
const MORE_CLAUSES = 500

/**
 * Exact search by clause learning (lazy clause generation: Schutt, Feydy, Stuckey and Wallace, Constraints 16, 2011).
 * It asks for a schedule that ends at the bound; each refusal raises the bound (destructive lower bound), until a schedule
 * is found or the bound meets the schedule at hand. By counts alone it always goes the same way.
 */
export function exactSchedule(problem: Compiled, limits: ExactLimits): Proof {
  if (limits.bound >= limits.best.makespan) return { bound: limits.best.makespan, found: null }
  return new ExactSearch(problem, limits).run()
}

class ExactSearch {
  readonly #problem: Compiled
  readonly #limits: ExactLimits
  readonly #propagation: Propagation
  readonly #analysis: ConflictAnalysis
  readonly #activity: Float64Array
  #step = 1
  #conflicts = 0

  constructor(problem: Compiled, limits: ExactLimits) {
    this.#problem = problem
    this.#limits = limits
    this.#propagation = new Propagation(problem, limits.bound, limits.best.makespan - 1)
    this.#activity = new Float64Array(this.#propagation.trail.literals)
    this.#analysis = new ConflictAnalysis(this.#propagation, (literal) => this.#bump(literal))
  }

  run(): Proof {
    const { best } = this.#limits
    const none = { bound: best.makespan, found: null }
    if (this.#propagation.hopeless || this.#propagation.propagateAll()) return none
    let clausesKept = CLAUSES
    for (let run = 1; ; run++) {
      const outcome = this.#search(luby(run) * RUN, run === 1)
      if (outcome === "refuted") return none
      if (outcome === "found") return this.#schedule()
      this.#propagation.backTo(0)
      if (this.#propagation.clauses.clauses.length > clausesKept) {
        this.#propagation.clauses.reduce()
        clausesKept += MORE_CLAUSES
      }
      if (this.#isOver()) return { bound: this.#bound(), found: null }
    }
  }

  /** Searches until a schedule is found, none can be, or so many conflicts are met. */
  #search(conflicts: number, byStart: boolean): "found" | "refuted" | "spent" {
    const propagation = this.#propagation
    for (let met = 0; ; ) {
      const conflict = propagation.propagate()
      if (conflict) {
        met++
        this.#conflicts++
        if (this.#conflicts % CONFLICTS_BETWEEN_ASKING === 0 && this.#isOver()) return "spent"
        if (!this.#learn(conflict)) return "refuted"
      } else if (met >= conflicts) return "spent"
      else if (!this.#decide(byStart)) return "found"
    }
  }

  #isOver(): boolean {
    return this.#conflicts >= this.#limits.maxConflicts || this.#limits.stop()
  }

  #learn(conflict: readonly Literal[]): boolean {
    const propagation = this.#propagation
    const lesson = this.#analysis.lesson(conflict)
    if (!lesson) return false
    propagation.backTo(lesson.level)
    const [first = 0] = lesson.literals
    const clause = lesson.literals.length > 1 ? propagation.clauses.add(lesson.literals) : -1
    this.#step /= ACTIVITY_DECAY
    propagation.clauses.decay()
    return propagation.learn(first, clause)
  }

  /** Chooses a bound to try: first that all ends at the bound; false if every start is fixed. */
  #decide(byStart: boolean): boolean {
    const { trail, end } = this.#propagation
    if (trail.depth === 0) {
      this.#propagation.choose(2 * end + 1, -trail.value[2 * end]!)
      return true
    }
    const choice = byStart ? this.#earliest() : (this.#mostActive() ?? this.#earliest())
    if (!choice) return false
    this.#propagation.choose(choice.key, choice.w)
    return true
  }

  /** The activity that can start first (of these the one that must), at its first moment. */
  #earliest(): { key: Key; w: number } | null {
    const { value } = this.#propagation.trail
    let best = -1
    for (let a = 0; a <= this.#problem.count; a++) {
      const first = value[2 * a]!
      if (first + value[2 * a + 1]! === 0) continue
      const sooner = best < 0 ? -1 : first - value[2 * best]! || value[2 * best + 1]! - value[2 * a + 1]!
      if (sooner < 0) best = a
    }
    return best < 0 ? null : { key: 2 * best + 1, w: -value[2 * best]! }
  }

  /** The open bound that had most part in recent conflicts, on the side of the schedule at hand; null if none had any. */
  #mostActive(): { key: Key; w: number } | null {
    const { trail } = this.#propagation
    let most = 0
    let found = -1
    for (let key = 0; key < 2 * this.#problem.count; key += 2) {
      const from = trail.offset[key]! + trail.value[key]! + 1
      const to = trail.offset[key]! - trail.value[key + 1]!
      for (let literal = from; literal <= to; literal++) {
        if (this.#activity[literal]! > most) {
          most = this.#activity[literal]!
          found = literal
        }
      }
    }
    if (found < 0) return null
    const key = trail.keyOf[found]!
    const w = trail.worth(found)
    const later = this.#limits.best.starts[key >> 1]! >= w
    return later ? { key, w } : { key: key + 1, w: 1 - w }
  }

  /** Activity is kept for the "starts at w or later" of each pair of opposite bounds. */
  #bump(literal: Literal): void {
    const { trail } = this.#propagation
    const even = trail.keyOf[literal]! & 1 ? trail.opposite[literal]! : literal
    this.#activity[even] = this.#activity[even]! + this.#step
    if (this.#step > TOO_LARGE) {
      for (let each = 0; each < this.#activity.length; each++)
        this.#activity[each] = this.#activity[each]! / TOO_LARGE
      this.#step /= TOO_LARGE
    }
  }

  #bound(): number {
    return this.#propagation.trail.value[2 * this.#propagation.end]!
  }

  #schedule(): Proof {
    const { value } = this.#propagation.trail
    const starts = Int32Array.from({ length: this.#problem.count }, (_, a) => value[2 * a]!)
    const makespan = Math.max(0, ...starts.map((start, a) => start + this.#problem.duration[a]!))
    return { bound: makespan, found: { starts, makespan } }
  }
}

/** Luby's sequence 1 1 2 1 1 2 4 ... from 1 on (Luby, Sinclair and Zuckerman, Information Processing Letters 47, 1993). */
function luby(place: number): number {
  let power = 1
  while (2 * power <= place + 1) power *= 2
  return power === place + 1 ? power / 2 : luby(place - power + 1)
}
