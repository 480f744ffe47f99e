/** Figures that differ from a whole one by less are whole: 400 × 1.1 is 440, not 441. */
const noise = 1e-6

/** A figure rounded up to a whole one, cleared of binary noise first. */
export function wholeUp(value: number): number {
  const whole = Math.ceil(value - noise)
  return whole === 0 ? 0 : whole
}
