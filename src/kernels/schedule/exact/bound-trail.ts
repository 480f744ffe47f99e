/**
 * A bound: activity x starts at `w` or later is (key 2x, w); at `w` or earlier is (key 2x + 1, −w).
 * So every key only ever rises, and the opposite of (key, w) is (key ^ 1, 1 − w).
 */
export type Key = number

/** A bound (key, w) as one number. */
export type Literal = number

/** Why a bound rose: nothing (a choice), or the number of a clause, a link or a stored reason. */
export type Reason = number

/** A choice or a bound given from the start has no reason. */
export const NO_REASON = -1

/** The bounds of all starts, and in which order and why they rose, so that they can be taken back. */
export class BoundTrail {
  /** The bound of each key as it stands. */
  readonly value: Int32Array
  /** The bound of each key from the start. */
  readonly least: Int32Array
  /** First number of each key's literals less its least value. */
  readonly offset: Int32Array
  readonly keyOf: Int32Array
  readonly opposite: Int32Array
  readonly literals: number
  /** The latest entry of each key, −1 before any. */
  readonly latest: Int32Array
  key: number[] = []
  old: number[] = []
  risen: number[] = []
  before: number[] = []
  reason: Reason[] = []
  level: number[] = []
  levelStart: number[] = []

  /** @param first and @param last the widest range of each start */
  constructor(first: Int32Array, last: Int32Array) {
    const count = first.length
    this.value = new Int32Array(2 * count)
    this.offset = new Int32Array(2 * count)
    this.latest = new Int32Array(2 * count).fill(-1)
    let literals = 0
    for (let key = 0; key < 2 * count; key++) {
      const x = key >> 1
      this.value[key] = key & 1 ? -last[x]! : first[x]!
      this.offset[key] = literals - this.value[key]!
      literals += last[x]! - first[x]! + 2
    }
    this.literals = literals
    this.least = this.value.slice()
    this.keyOf = new Int32Array(literals)
    this.opposite = new Int32Array(literals)
    for (let key = 0; key < 2 * count; key++) {
      const x = key >> 1
      const least = this.value[key]!
      for (let w = least; w <= least + last[x]! - first[x]! + 1; w++) {
        this.keyOf[this.offset[key]! + w] = key
        this.opposite[this.offset[key]! + w] = this.offset[key ^ 1]! + 1 - w
      }
    }
  }

  get depth(): number {
    return this.levelStart.length
  }

  get length(): number {
    return this.key.length
  }

  /** The literal of a bound; one that was true from the start stands for all below it. */
  literal(key: Key, w: number): Literal {
    return this.offset[key]! + Math.max(w, this.least[key]!)
  }

  worth(literal: Literal): number {
    return literal - this.offset[this.keyOf[literal]!]!
  }

  isTrue(literal: Literal): boolean {
    const key = this.keyOf[literal]!
    return this.value[key]! >= literal - this.offset[key]!
  }

  isFalse(literal: Literal): boolean {
    return this.isTrue(this.opposite[literal]!)
  }

  newLevel(): void {
    this.levelStart.push(this.length)
  }

  /** Raises a bound; it must be higher than it stands and not against the opposite one. */
  raise(key: Key, w: number, reason: Reason): void {
    this.key.push(key)
    this.old.push(this.value[key]!)
    this.risen.push(w)
    this.before.push(this.latest[key]!)
    this.reason.push(reason)
    this.level.push(this.depth)
    this.latest[key] = this.length - 1
    this.value[key] = w
  }

  /** Takes back the latest entry. */
  pop(): void {
    const key = this.key.pop()!
    this.value[key] = this.old.pop()!
    this.latest[key] = this.before.pop()!
    this.risen.pop()
    this.reason.pop()
    this.level.pop()
  }

  /** The entry that made (key, w) true; −1 if it was true from the start. */
  entryOf(key: Key, w: number): number {
    let entry = this.latest[key]!
    while (entry >= 0 && this.old[entry]! >= w) entry = this.before[entry]!
    return entry
  }
}
