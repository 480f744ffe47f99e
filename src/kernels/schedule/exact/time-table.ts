import type { Compiled } from "../problem.ts"
import type { BoundTrail, Key, Literal } from "./bound-trail.ts"

/** What the time-table asks to be done: raise a bound for a reason, the reason being bounds that all hold. */
export type Raise = (key: Key, w: number, reason: Literal[]) => boolean

/**
 * The time-table of each resource: the units held for sure at each time, where an activity must run whatever its start
 * (its latest start lies before its earliest finish). Reasons are given for single moments
 * (Schutt, Feydy, Stuckey and Wallace, Constraints 16, 2011).
 */
export class TimeTable {
  readonly #problem: Compiled
  readonly #trail: BoundTrail
  readonly #horizon: number
  readonly #usage: Int32Array
  /** The bounds as far as they are entered in the table. */
  readonly #entered: Int32Array

  constructor(problem: Compiled, trail: BoundTrail, horizon: number) {
    this.#problem = problem
    this.#trail = trail
    this.#horizon = horizon
    this.#usage = new Int32Array(problem.capacities.length * horizon)
    this.#entered = trail.value.slice(0, 2 * problem.count)
    for (let a = 0; a < problem.count; a++) {
      const [latest, finish] = [this.#latest(a), this.#finish(a)]
      if (latest < finish) this.#change(a, latest, finish, 1)
    }
  }

  /** Enters a risen bound; returns the bounds that together overfill a moment, or null. */
  enter(key: Key, risen: number): Literal[] | null {
    const a = key >> 1
    if (a >= this.#problem.count) return null
    const [from, to] = this.#grown(key, risen)
    this.#entered[key] = risen
    if (from >= to) return null
    const full = this.#change(a, from, to, 1)
    if (full < 0) return null
    const r = Math.floor(full / this.#horizon)
    return this.#heldAt(full % this.#horizon, r, -1, this.#problem.capacities[r]!)
  }

  /** Takes a bound back out of the table, the latest entered first. */
  leave(key: Key, old: number): void {
    const a = key >> 1
    if (a >= this.#problem.count) return
    const risen = this.#entered[key]!
    this.#entered[key] = old
    const [from, to] = this.#grown(key, risen)
    if (from < to) this.#change(a, from, to, -1)
  }

  /** True if what runs for sure overfills any moment. */
  overfull(): boolean {
    const { capacities } = this.#problem
    return this.#usage.some((units, at) => units > capacities[Math.floor(at / this.#horizon)]!)
  }

  /** Moves starts out of moments where too much is held; false if `raise` ran into a conflict. */
  filter(raise: Raise): boolean {
    const { count, resources } = this.#problem
    for (let a = 0; a < count; a++) {
      if (resources[a]!.length === 0) continue
      if (this.#trail.value[2 * a]! + this.#trail.value[2 * a + 1]! === 0) continue
      if (!this.#filterStart(a, raise) || !this.#filterEnd(a, raise)) return false
    }
    return true
  }

  #filterStart(a: number, raise: Raise): boolean {
    const { value } = this.#trail
    const length = this.#problem.duration[a]!
    const key = 2 * a
    for (let moved = true; moved; ) {
      moved = false
      const start = value[key]!
      for (let time = start + length - 1; time >= start; time--) {
        const r = this.#blocked(a, time)
        if (r < 0) continue
        const reason = this.#heldAt(time, r, a, this.#spare(a, r))
        reason.push(this.#trail.literal(key, time + 1 - length))
        if (!raise(key, time + 1, reason)) return false
        moved = true
        break
      }
    }
    return true
  }

  #filterEnd(a: number, raise: Raise): boolean {
    const { value } = this.#trail
    const length = this.#problem.duration[a]!
    const key = 2 * a + 1
    for (let moved = true; moved; ) {
      moved = false
      const latest = -value[key]!
      for (let time = latest; time < latest + length; time++) {
        const r = this.#blocked(a, time)
        if (r < 0) continue
        const reason = this.#heldAt(time, r, a, this.#spare(a, r))
        reason.push(this.#trail.literal(key, -time))
        if (!raise(key, length - time, reason)) return false
        moved = true
        break
      }
    }
    return true
  }

  /** A resource of which too little is left at a moment for the activity to run then, unless it runs then anyway; −1 if none. */
  #blocked(a: number, time: number): number {
    if (time >= this.#latest(a) && time < this.#finish(a)) return -1
    const { resources, capacities, demand } = this.#problem
    const width = capacities.length
    for (const r of resources[a]!) {
      if (this.#usage[r * this.#horizon + time]! + demand[a * width + r]! > capacities[r]!) return r
    }
    return -1
  }

  /** Bounds that make more than `spare` units of a resource be held at a moment by others than one activity. */
  #heldAt(time: number, r: number, besides: number, spare: number): Literal[] {
    const { count, demand, duration, capacities } = this.#problem
    const width = capacities.length
    const holding: number[] = []
    let sum = 0
    for (let a = 0; a < count; a++) {
      const units = demand[a * width + r]!
      if (units === 0 || a === besides || time < this.#latest(a) || time >= this.#finish(a)) continue
      holding.push(a)
      sum += units
    }
    const literals: Literal[] = []
    for (const a of holding) {
      const units = demand[a * width + r]!
      if (sum - units > spare) {
        sum -= units
        continue
      }
      literals.push(
        this.#trail.literal(2 * a, time + 1 - duration[a]!),
        this.#trail.literal(2 * a + 1, -time),
      )
    }
    return literals
  }

  #spare(a: number, r: number): number {
    const { capacities, demand } = this.#problem
    return capacities[r]! - demand[a * capacities.length + r]!
  }

  #latest(a: number): number {
    return -this.#entered[2 * a + 1]!
  }

  #finish(a: number): number {
    return this.#entered[2 * a]! + this.#problem.duration[a]!
  }

  /** The stretch by which an activity's sure part grows when one of its bounds rises. */
  #grown(key: Key, risen: number): [number, number] {
    const a = key >> 1
    if (key & 1) return [-risen, Math.min(this.#latest(a), this.#finish(a))]
    return [Math.max(this.#latest(a), this.#finish(a)), risen + this.#problem.duration[a]!]
  }

  /** Adds or takes off an activity's units over a stretch; the place of an overfilled moment, −1 if none. */
  #change(a: number, from: number, to: number, sign: number): number {
    const { resources, demand, capacities } = this.#problem
    const width = capacities.length
    let full = -1
    for (const r of resources[a]!) {
      const units = sign * demand[a * width + r]!
      for (let at = r * this.#horizon + from; at < r * this.#horizon + to; at++) {
        const held = this.#usage[at]! + units
        this.#usage[at] = held
        if (held > capacities[r]!) full = at
      }
    }
    return full
  }
}
