/** A source of numbers from 0 up to 1 that only its seed decides: the same seed gives the same numbers on every machine. */
export type Seeded = () => number

/**
 * Seeded numbers by the 32-bit generator known as mulberry32 (public domain); not for secrets.
 * @param seed any integer
 */
export function seeded(seed: number): Seeded {
  let state = seed | 0
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}
