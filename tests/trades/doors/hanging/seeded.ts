/** Repeatable draws for generated cases. */
export function seeded(seed: number) {
  let state = seed >>> 0
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 2 ** 32
  }
  const whole = (from: number, to: number) => from + Math.floor(next() * (to - from + 1))
  const half = (from: number, to: number) => whole(2 * from, 2 * to) / 2
  return {
    whole,
    half,
    pick: <T>(from: readonly T[]): T => from[whole(0, from.length - 1)]!,
    /** Three measures about one, differing by up to a spread. */
    three: (about: number, spread: number) => [0, 1, 2].map(() => about + half(0, spread)),
  }
}
