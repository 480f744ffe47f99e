import type { Degrees, Mm } from "../../../kernels/units.ts"

/** A flight before anything is laid: its rises, and what will lie under, on and over it. */
export interface Flight {
  /** Rises from deck to deck with bare treads, from the bottom, mm. */
  rises: readonly Mm[]
  going: Mm
  /** Finished floor over the deck at the foot and at the head, mm. */
  below: Mm
  above: Mm
  /** What is laid on each tread, mm. */
  onTreads: Mm
}

/** One rise, from the bottom: as built, and as walked on when floors and treads are finished, mm. */
export interface Rise {
  number: number
  before: Mm
  after: Mm
}

/**
 * Every rise before and after finishes. What is laid on the treads lifts them all alike, so that only the first rise (less the floor
 * below, more the treads) and the last (more the floor above, less the treads) change.
 */
export function risesOf({ rises, below, above, onTreads }: Flight): Rise[] {
  const last = rises.length - 1
  return rises.map((before, index) => {
    const foot = index === 0 ? below : onTreads
    const head = index === last ? above : onTreads
    return { number: index + 1, before, after: before + head - foot }
  })
}

/** Difference between the highest and the lowest finished rise, mm. */
export function unevenness(rises: readonly Rise[]): Mm {
  const after = rises.map((rise) => rise.after)
  return Math.max(...after) - Math.min(...after)
}

/** Pitch of a flight: the angle whose tangent is rise over going. */
export function pitchOf(rise: Mm, going: Mm): Degrees {
  return (Math.atan2(rise, going) * 180) / Math.PI
}

/** Twice the rise and once the going, mm. */
export function twiceRiseAndGoing(rise: Mm, going: Mm): Mm {
  return 2 * rise + going
}
