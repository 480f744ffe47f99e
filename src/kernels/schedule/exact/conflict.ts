import type { Literal } from "./bound-trail.ts"
import { NO_REASON } from "./bound-trail.ts"
import type { Propagation } from "./propagation.ts"

/** What a conflict teaches: a clause whose first literal holds as soon as the search is back on `level`. */
export interface Lesson {
  literals: Int32Array
  level: number
}

/** Looks back from a conflict along the reasons to the one bound on the latest level from which it follows. */
export class ConflictAnalysis {
  readonly #propagation: Propagation
  readonly #onBound: (literal: Literal) => void
  /** For each key the bound needed, and the entry that made it true; −1 where none is needed. */
  readonly #need: Int32Array
  readonly #entry: Int32Array
  #onLevel = 0

  /** @param onBound is told each bound that had a part in the conflict */
  constructor(propagation: Propagation, onBound: (literal: Literal) => void) {
    this.#propagation = propagation
    this.#onBound = onBound
    const keys = propagation.trail.value.length
    this.#need = new Int32Array(keys)
    this.#entry = new Int32Array(keys).fill(-1)
  }

  /**
   * The lesson of bounds that all hold but cannot; null if they hold for good.
   * Takes the search back to the latest level that has a part in it.
   */
  lesson(conflict: readonly Literal[]): Lesson | null {
    const { trail } = this.#propagation
    let latest = 0
    for (const literal of conflict) latest = Math.max(latest, this.#levelOf(literal))
    if (latest === 0) return null
    const wanted = [...conflict]
    this.#propagation.backTo(latest)
    this.#onLevel = 0
    for (const literal of wanted) this.#require(literal)
    let at = trail.length - 1
    for (; ; at--) {
      const key = trail.key[at]!
      if (this.#entry[key] !== at) continue
      if (this.#onLevel === 1) break
      this.#onLevel--
      this.#entry[key] = -1
      for (const literal of this.#propagation.why(trail.reason[at]!, key, this.#need[key]!))
        this.#require(literal)
    }
    return this.#taken(trail.key[at]!)
  }

  #levelOf(literal: Literal): number {
    const { trail } = this.#propagation
    const entry = trail.entryOf(trail.keyOf[literal]!, trail.worth(literal))
    return entry < 0 ? 0 : trail.level[entry]!
  }

  #require(literal: Literal): void {
    const { trail } = this.#propagation
    const key = trail.keyOf[literal]!
    const w = trail.worth(literal)
    const entry = trail.entryOf(key, w)
    if (entry < 0 || trail.level[entry] === 0) return
    const before = this.#entry[key]!
    if (before >= 0 && this.#need[key]! >= w) return
    this.#onBound(literal)
    const counted = before >= 0 && trail.level[before] === trail.depth
    if (trail.level[entry] === trail.depth && !counted) this.#onLevel++
    this.#need[key] = w
    this.#entry[key] = entry
  }

  /** The clause of the bounds needed, cleared of those that follow from others, and the tables cleared for the next. */
  #taken(first: number): Lesson {
    const { trail } = this.#propagation
    const keys: number[] = []
    for (let key = 0; key < this.#entry.length; key++) {
      if (key !== first && this.#entry[key]! >= 0 && !this.#follows(key)) keys.push(key)
    }
    const levelOf = (key: number) => trail.level[this.#entry[key]!]!
    let level = 0
    for (let place = 0; place < keys.length; place++) {
      if (levelOf(keys[place]!) <= level) continue
      level = levelOf(keys[place]!)
      const swap = keys[0]!
      keys[0] = keys[place]!
      keys[place] = swap
    }
    const literals = Int32Array.from(
      [first, ...keys],
      (key) => trail.opposite[trail.literal(key, this.#need[key]!)]!,
    )
    this.#entry.fill(-1)
    return { literals, level }
  }

  /** Does a needed bound follow from other, earlier ones that are needed too? */
  #follows(key: number): boolean {
    const { trail } = this.#propagation
    const entry = this.#entry[key]!
    const reason = trail.reason[entry]!
    if (reason === NO_REASON) return false
    return this.#propagation.why(reason, key, this.#need[key]!).every((literal) => {
      const other = trail.keyOf[literal]!
      const w = trail.worth(literal)
      const since = trail.entryOf(other, w)
      if (since < 0 || trail.level[since] === 0) return true
      const held = this.#entry[other]!
      return other !== key && held >= 0 && held < entry && this.#need[other]! >= w
    })
  }
}
