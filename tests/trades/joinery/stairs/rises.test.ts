import { describe, expect, it } from "vitest"
import {
  pitchOf,
  risesOf,
  twiceRiseAndGoing,
  unevenness,
} from "../../../../src/trades/joinery/stairs/rises.ts"
import { joineryFacts } from "../../../facts/joinery.ts"

const flight = { rises: Array(13).fill(205), going: 225, below: 12, above: 19, onTreads: 0 }

describe("rises of a flight", () => {
  // bare treads: the floor below takes 12 off the first rise, the floor above puts 19 on the last
  it("change at the foot and at the head when floors are laid", () => {
    const rises = risesOf(flight)
    expect([rises[0]!.after, rises[1]!.after, rises[12]!.after]).toEqual([193, 205, 224])
    expect(unevenness(rises)).toBe(31)
  })

  it("come out even when the same is laid everywhere", () => {
    expect(unevenness(risesOf({ ...flight, below: 15, above: 15, onTreads: 15 }))).toBe(0)
  })

  it("keep the height of the flight but for the two floors, whatever lies on the treads", () => {
    for (let index = 0; index < 200; index++) {
      const rises = Array.from(
        { length: 1 + (index % 16) },
        (_, step) => 150 + ((index * 31 + step * 17) % 70),
      )
      const case_ = {
        rises,
        going: 230,
        below: index % 40,
        above: (index * 7) % 40,
        onTreads: (index * 3) % 25,
      }
      const after = risesOf(case_).reduce((sum, rise) => sum + rise.after, 0)
      const before = rises.reduce((sum, rise) => sum + rise, 0)
      expect(after).toBeCloseTo(before + case_.above - case_.below, 9)
    }
  })

  it.each(joineryFacts.pitches)(
    "rise $rise on going $going: $pitch degrees ($source)",
    ({ rise, going, pitch, sum }) => {
      expect(pitchOf(rise, going)).toBeCloseTo(pitch, 1)
      expect(twiceRiseAndGoing(rise, going)).toBe(sum)
    },
  )
})
