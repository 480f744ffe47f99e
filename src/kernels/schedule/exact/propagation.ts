import type { Compiled, StartGap } from "../problem.ts"
import type { Key, Literal, Reason } from "./bound-trail.ts"
import { BoundTrail, NO_REASON } from "./bound-trail.ts"
import { ClauseStore } from "./clauses.ts"
import { TimeTable } from "./time-table.ts"

/** Reasons by kind: number × 4 + kind. */
const CLAUSE = 0
const LINK = 1
const STORED = 2

/**
 * All that follows from bounds on starts: by the links, by the time-tables and by the clauses learned.
 * Activity number `count` stands for the end of the project.
 */
export class Propagation {
  readonly trail: BoundTrail
  readonly clauses: ClauseStore
  /** The end of the project as an activity by number. */
  readonly end: number
  readonly #table: TimeTable
  readonly #links: StartGap[]
  readonly #linksBy: number[][]
  readonly #stored: Literal[][] = []
  readonly #storedAt: number[] = []
  readonly #follow = (literal: Literal, clause: number): void => {
    this.trail.raise(this.trail.keyOf[literal]!, this.trail.worth(literal), clause * 4 + CLAUSE)
  }
  #entered = 0
  #conflict: Literal[] = []

  /** @param latestEnd the end that schedules sought must not pass; not before any activity's head and tail */
  constructor(problem: Compiled, earliestEnd: number, latestEnd: number) {
    this.end = problem.count
    const first = Int32Array.from([...problem.head, earliestEnd])
    const last = Int32Array.from([...problem.tail.map((tail) => latestEnd - tail), latestEnd])
    this.trail = new BoundTrail(first, last)
    this.clauses = new ClauseStore(this.trail)
    this.#links = [...problem.gaps, ...linksToEnd(problem)]
    this.#linksBy = Array.from({ length: 2 * (problem.count + 1) }, () => [])
    this.#links.forEach(({ from, to }, number) => {
      this.#linksBy[2 * from]!.push(number)
      this.#linksBy[2 * to + 1]!.push(number)
    })
    this.#table = new TimeTable(problem, this.trail, latestEnd + 1)
  }

  /** True if the widest ranges already overfill a resource. */
  get hopeless(): boolean {
    return this.#table.overfull()
  }

  /** Makes a choice: a bound without a reason, on a level of its own. */
  choose(key: Key, w: number): void {
    this.#storedAt.push(this.#stored.length)
    this.trail.newLevel()
    if (this.trail.value[key]! < w) this.trail.raise(key, w, NO_REASON)
  }

  /** Has a bound hold by a learned clause, or for good when `clause` is none. @returns false if it cannot */
  learn(literal: Literal, clause: number): boolean {
    const reason = clause < 0 ? NO_REASON : clause * 4 + CLAUSE
    return this.#raise(this.trail.keyOf[literal]!, this.trail.worth(literal), reason)
  }

  /** Draws all that follows from the bounds; returns bounds that all hold but cannot, or null. */
  propagate(): Literal[] | null {
    const { trail } = this
    while (this.#entered < trail.length) {
      while (this.#entered < trail.length) {
        const entry = this.#entered++
        const key = trail.key[entry]!
        const overfull = this.#table.enter(key, trail.risen[entry]!)
        if (overfull) return overfull
        if (!this.#followLinks(key, trail.risen[entry]!)) return this.#conflict
        if (!this.#followClauses(key, trail.old[entry]!, trail.risen[entry]!)) return this.#conflict
      }
      const moved = this.#table.filter((key, w, reason) => {
        this.#stored.push(reason)
        return this.#raise(key, w, (this.#stored.length - 1) * 4 + STORED)
      })
      if (!moved) return this.#conflict
    }
    return null
  }

  /** Filters once at the start, when nothing has risen yet. */
  propagateAll(): Literal[] | null {
    for (let key = 0; key < 2 * (this.end + 1); key++) {
      if (!this.#followLinks(key, this.trail.value[key]!)) return this.#conflict
    }
    const fine = this.#table.filter((key, w, reason) => {
      this.#stored.push(reason)
      return this.#raise(key, w, (this.#stored.length - 1) * 4 + STORED)
    })
    return fine ? this.propagate() : this.#conflict
  }

  /** Takes back all choices above a level and what followed from them. */
  backTo(level: number): void {
    const { trail } = this
    if (trail.depth <= level) return
    const start = trail.levelStart[level]!
    while (trail.length > start) {
      const entry = trail.length - 1
      if (entry < this.#entered) {
        this.#table.leave(trail.key[entry]!, trail.old[entry]!)
        this.#entered--
      }
      trail.pop()
    }
    trail.levelStart.length = level
    this.#stored.length = this.#storedAt[level]!
    this.#storedAt.length = level
  }

  /** Bounds that all hold and from which (key, w) follows by a reason; w may be lower than what the reason gave. */
  why(reason: Reason, key: Key, w: number): Literal[] {
    const number = reason >> 2
    if ((reason & 3) === LINK) {
      const { from, to, gap } = this.#links[number]!
      return [this.trail.literal(key & 1 ? 2 * to + 1 : 2 * from, w - gap)]
    }
    if ((reason & 3) === STORED) return this.#stored[number]!
    this.clauses.bump(number)
    const { literals } = this.clauses.clauses[number]!
    return Array.from(literals.subarray(1), (literal) => this.trail.opposite[literal]!)
  }

  #raise(key: Key, w: number, reason: Reason): boolean {
    const { value } = this.trail
    if (value[key]! >= w) return true
    if (w > -value[key ^ 1]!) {
      this.#conflict = reason === NO_REASON ? [] : [...this.why(reason, key, w)]
      this.#conflict.push(this.trail.literal(key ^ 1, 1 - w))
      return false
    }
    this.trail.raise(key, w, reason)
    return true
  }

  #followLinks(key: Key, risen: number): boolean {
    for (const number of this.#linksBy[key]!) {
      const { from, to, gap } = this.#links[number]!
      if (!this.#raise(key & 1 ? 2 * from + 1 : 2 * to, risen + gap, number * 4 + LINK)) return false
    }
    return true
  }

  #followClauses(key: Key, old: number, risen: number): boolean {
    const { trail } = this
    let clear = true
    for (let w = old + 1; w <= risen && clear; w++) {
      const gone = trail.opposite[trail.literal(key, w)]!
      const empty = this.clauses.whenFalse(gone, this.#follow)
      if (empty) {
        this.#conflict = Array.from(empty.literals, (literal) => trail.opposite[literal]!)
        clear = false
      }
    }
    return clear
  }
}

/** Links to the end from every activity that no follower keeps inside it. */
function linksToEnd(problem: Compiled): StartGap[] {
  const links: StartGap[] = []
  for (let a = 0; a < problem.count; a++) {
    const length = problem.duration[a]!
    if (!problem.gapsFrom[a]!.some(({ gap }) => gap >= length))
      links.push({ from: a, to: problem.count, gap: length })
  }
  return links
}
