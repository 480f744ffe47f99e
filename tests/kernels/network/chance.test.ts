import { describe, expect, it } from "vitest"
import {
  chanceWithin,
  durationVariance,
  expectedDuration,
  networkChance,
  normalBelow,
} from "../../../src/kernels/network/chance.ts"
import { CLEANING_EQUIPMENT, NORMAL, PLANT_BUILDING, SEVEN_TASKS } from "../../facts/network.ts"

describe("three-point guesses", () => {
  describe.each([PLANT_BUILDING, CLEANING_EQUIPMENT])("$source", ({ rows, duration, variance, chances }) => {
    const guesses = rows.map((row) => {
      const [optimistic, likely, pessimistic] = row[9]
      return { id: row[0], optimistic, likely, pessimistic, after: row[2].map((from) => ({ from })) }
    })
    const network = networkChance(guesses)

    it.each(rows)("expected duration of %s", (...row) => {
      expect(expectedDuration(guesses.find(({ id }) => id === row[0])!)).toBeCloseTo(row[1], 12)
    })

    it("mean, variance along the critical chain and chances", () => {
      expect(network.mean).toBeCloseTo(duration, 9)
      expect(Math.abs(network.variance - variance)).toBeLessThan(0.0005)
      for (const { within, chance } of chances) {
        expect(Math.abs(chanceWithin(within, network.mean, network.variance) - chance)).toBeLessThan(0.00006)
      }
    })
  })

  it.each(SEVEN_TASKS.rows)(
    "expected duration of task %s",
    (_id, _before, [optimistic, likely, pessimistic], mean) => {
      expect(Math.abs(expectedDuration({ optimistic, likely, pessimistic }) - mean)).toBeLessThan(0.0051)
    },
  )

  it("of two chains equally long, takes the one that varies more", () => {
    const chance = networkChance([
      { id: "sure", optimistic: 4, likely: 4, pessimistic: 4, after: [] },
      { id: "unsure", optimistic: 1, likely: 4, pessimistic: 7, after: [] },
    ])
    expect(chance).toEqual({ mean: 4, variance: 1 })
    expect(durationVariance({ optimistic: 1, likely: 4, pessimistic: 7 })).toBe(1)
  })

  it("without spread it is certain or impossible", () => {
    expect(chanceWithin(4, 4, 0)).toBe(1)
    expect(chanceWithin(3.9, 4, 0)).toBe(0)
  })
})

describe("normal distribution", () => {
  it.each(NORMAL)("below $z lies $below ($source)", ({ z, below }) => {
    expect(normalBelow(z)).toBeCloseTo(below, 12)
  })

  it("is symmetric and closes at both ends", () => {
    for (let z = 0; z < 9; z += 0.37) expect(normalBelow(z) + normalBelow(-z)).toBeCloseTo(1, 12)
    expect(normalBelow(40)).toBe(1)
    expect(normalBelow(-40)).toBe(0)
  })
})
