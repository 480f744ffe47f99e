import type { Mishap } from "./survey.ts"

/** A reading as it may have been meant, and what would have happened to it. */
export interface Mend {
  meant: number
  mishap: Mishap
}

/** Slips of the tape that are whole hundreds or thousands, mm. */
const slips: readonly { by: number; mishap: Mishap }[] = [
  { by: 100, mishap: "100 mm slip" },
  { by: 1000, mishap: "1000 mm slip" },
]

/** What a length may have been meant to read: a slip either way, or two neighbouring digits swapped. Whole mm, above zero, all different. */
export function lengthMends(read: number): Mend[] {
  const slipped = slips.flatMap(({ by, mishap }) => [-by, by].map((step) => ({ meant: read + step, mishap })))
  const swapped = swappedDigits(read).map((meant): Mend => ({ meant, mishap: "digits swapped" }))
  const seen = new Set([read])
  return [...slipped, ...swapped].filter(({ meant }) => {
    if (meant <= 0 || seen.has(meant)) return false
    seen.add(meant)
    return true
  })
}

/** What a turn may have been meant to read: the other way. */
export function turnMends(read: number): Mend[] {
  return read === 0 || Math.abs(read) === 180 ? [] : [{ meant: -read, mishap: "left for right" }]
}

/** The figures that come of swapping two neighbouring digits of a whole number; a leading zero is none. */
export function swappedDigits(read: number): number[] {
  const digits = [...String(Math.round(read))]
  return digits.slice(1).flatMap((digit, index) => {
    const other = digits[index]!
    if (digit === other || (index === 0 && digit === "0")) return []
    return [Number([...digits.slice(0, index), digit, other, ...digits.slice(index + 2)].join(""))]
  })
}
