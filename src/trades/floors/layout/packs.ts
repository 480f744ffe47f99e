import type { Mm } from "../../../kernels/units.ts"

/** A length of board, and how many boards of that length one pack holds. */
export interface PackedLength {
  length: Mm
  perPack: number
}

/** Lengths that differ by less are the same, mm. */
const same: Mm = 0.01

/** Packs that hold so many boards of each length: whole packs, every one with the maker's mix. */
export function packsHolding(taken: readonly number[], lengths: readonly PackedLength[]): number {
  return Math.max(0, ...taken.map((count, index) => Math.ceil(count / lengths[index]!.perPack)))
}

/** Length of all boards of one pack laid end to end, mm. */
export function packRun(lengths: readonly PackedLength[]): Mm {
  return lengths.reduce((sum, each) => sum + each.length * each.perPack, 0)
}

/**
 * Which length a fresh board is taken of, as its place in the list: of those that packs opened so far still hold the shortest that
 * does (or the longest, if asked), else the shortest that does of a pack newly opened. One that is laid whole is of just that length.
 */
export function freshLength(
  lengths: readonly PackedLength[],
  taken: readonly number[],
  piece: { length: Mm; isWhole: boolean; longest: boolean },
): number {
  if (lengths.length === 1) return 0
  if (piece.isWhole) return lengths.findIndex((each) => Math.abs(each.length - piece.length) <= same)
  const packs = packsHolding(taken, lengths)
  const long = lengths
    .map((each, index) => ({ index, ...each }))
    .filter((each) => each.length >= piece.length - same)
    .sort((a, b) => (piece.longest ? b.length - a.length : a.length - b.length))
  const inHand = long.find((each) => taken[each.index]! < packs * each.perPack)
  const longest = lengths.reduce(
    (best, each, index) => (each.length > lengths[best]!.length ? index : best),
    0,
  )
  return (inHand ?? long[0])?.index ?? longest
}
