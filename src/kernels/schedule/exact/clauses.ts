import type { BoundTrail, Literal } from "./bound-trail.ts"

/** A learned clause: at least one of its bounds holds in every schedule that is short enough. The first two are watched. */
export interface Clause {
  literals: Int32Array
  activity: number
}

/** What following up the clauses came to: nothing more, or a clause none of whose bounds can hold. */
export type ClauseConflict = Clause | null

/** How fast a clause's earlier use is forgotten, a conflict at a time. */
const DECAY = 0.999
/** Activities are scaled down beyond this, well within double precision's range. */
const TOO_LARGE = 1e100

/** The learned clauses, each watched by two of its bounds. */
export class ClauseStore {
  readonly clauses: Clause[] = []
  readonly #watches: (number[] | undefined)[]
  #trail: BoundTrail
  #step = 1

  constructor(trail: BoundTrail) {
    this.#trail = trail
    this.#watches = new Array(trail.literals)
  }

  /** Adds a clause of two literals or more, the first two not both false unless all are. @returns its number */
  add(literals: Int32Array): number {
    const clause = { literals, activity: this.#step }
    this.clauses.push(clause)
    this.#watch(this.clauses.length - 1)
    return this.clauses.length - 1
  }

  /** Marks a clause as useful. */
  bump(number: number): void {
    const clause = this.clauses[number]!
    clause.activity += this.#step
    if (clause.activity > TOO_LARGE) {
      for (const each of this.clauses) each.activity /= TOO_LARGE
      this.#step /= TOO_LARGE
    }
  }

  decay(): void {
    this.#step /= DECAY
  }

  /**
   * Follows up a bound that has become false: finds each clause another to watch, or has its last one hold.
   * @param follow is called with a literal that must hold now, and the number of the clause
   * @returns a clause that cannot hold, or null
   */
  whenFalse(literal: Literal, follow: (literal: Literal, clause: number) => void): ClauseConflict {
    const watching = this.#watches[literal]
    if (!watching) return null
    const trail = this.#trail
    let kept = 0
    for (let at = 0; at < watching.length; at++) {
      const number = watching[at]!
      const clause = this.clauses[number]!
      const lits = clause.literals
      if (lits[0] === literal) {
        lits[0] = lits[1]!
        lits[1] = literal
      }
      const first = lits[0]!
      if (!trail.isTrue(first)) {
        const other = unfalse(lits, trail)
        if (other > 0) {
          lits[1] = lits[other]!
          lits[other] = literal
          const list = this.#watches[lits[1]!]
          if (list) list.push(number)
          else this.#watches[lits[1]!] = [number]
          continue
        }
        if (trail.isFalse(first)) {
          while (at < watching.length) watching[kept++] = watching[at++]!
          watching.length = kept
          return clause
        }
        follow(first, number)
      }
      watching[kept++] = number
    }
    watching.length = kept
    return null
  }

  /** Drops the less useful half of the longer clauses; only when no choice stands. */
  reduce(): void {
    const order = [...this.clauses].sort((a, b) => b.activity - a.activity)
    const kept = order.filter((clause, place) => clause.literals.length === 2 || place < order.length / 2)
    this.clauses.length = 0
    this.#watches.fill(undefined)
    for (const clause of kept) {
      this.clauses.push(clause)
      this.#watch(this.clauses.length - 1)
    }
  }

  #watch(number: number): void {
    for (const literal of this.clauses[number]!.literals.subarray(0, 2)) {
      const list = this.#watches[literal]
      if (list) list.push(number)
      else this.#watches[literal] = [number]
    }
  }
}

function unfalse(lits: Int32Array, trail: BoundTrail): number {
  for (let at = 2; at < lits.length; at++) if (!trail.isFalse(lits[at]!)) return at
  return 0
}
