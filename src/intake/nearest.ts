/**
 * The known word nearest to what was written, by the fewest letters added, dropped, changed or swapped with their neighbour;
 * undefined when none is near (more than a third of the letters differ, and more than one letter). Case counts less than a letter.
 * Of equally near words the first is taken.
 * Source of the distance: R. Lowrance and R. A. Wagner, An Extension of the String-to-String Correction Problem, 1975, in its
 * restricted form (no letter is edited twice).
 */
export function nearest(written: string, known: Iterable<string>): string | undefined {
  let best: { word: string; distance: number } | undefined
  for (const word of known) {
    const distance = editDistance(written.toLowerCase(), word.toLowerCase())
    if (distance <= farthest(written, word) && distance < (best?.distance ?? Number.POSITIVE_INFINITY)) {
      best = { word, distance }
    }
  }
  return best?.word
}

/** Letters added, dropped, changed, or swapped with their neighbour, to make one word of the other. */
export function editDistance(from: string, to: string): number {
  // A word that is far too long is far from everything: the table is never built for it.
  if (Math.abs(from.length - to.length) > longestCompared || from.length > longestCompared) {
    return Math.max(from.length, to.length)
  }
  let beforeLast: number[] = []
  let last = Array.from({ length: to.length + 1 }, (_, column) => column)
  for (let row = 1; row <= from.length; row++) {
    const current = [row]
    for (let column = 1; column <= to.length; column++) {
      const same = from[row - 1] === to[column - 1]
      let least = Math.min(last[column]! + 1, current[column - 1]! + 1, last[column - 1]! + (same ? 0 : 1))
      const swapped = from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1]
      if (row > 1 && column > 1 && swapped) least = Math.min(least, beforeLast[column - 2]! + 1)
      current.push(least)
    }
    beforeLast = last
    last = current
  }
  return last[to.length]!
}

/** Longest word compared letter by letter; keys and ids are shorter. */
const longestCompared = 80

/** The most letters that may differ for two words to count as near: one, or a third of the longer. */
function farthest(written: string, word: string): number {
  return Math.max(1, Math.floor(Math.max(written.length, word.length) / 3))
}
