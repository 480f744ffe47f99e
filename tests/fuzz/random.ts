/** Numbers that look random and are the same for the same seed. */
export interface Random {
  /** A fraction from 0 to under 1. */
  next(): number
  /** A whole number from 0 to under `below`. */
  whole(below: number): number
  /** One of a list that is not empty. */
  of<T>(list: readonly T[]): T
  /** True with this chance. */
  chance(share: number): boolean
}

/** A 32-bit counter stirred by shifts and products; good enough to choose mistakes by, and nothing else. */
export function seeded(seed: number): Random {
  let state = (seed * 0x9e3779b1) >>> 0
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
  const whole = (below: number) => Math.floor(next() * below)
  return { next, whole, of: (list) => list[whole(list.length)]!, chance: (share) => next() < share }
}
