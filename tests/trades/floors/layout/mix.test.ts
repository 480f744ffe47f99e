import { describe, expect, it } from "vitest"
import type { EndLimits } from "../../../../src/trades/floors/layout/end-plan.ts"
import { fillRuns } from "../../../../src/trades/floors/layout/ends.ts"
import { emptyFloor } from "../../../../src/trades/floors/layout/floor-state.ts"
import { mixedPlaces } from "../../../../src/trades/floors/layout/mix.ts"
import { plainRun } from "./exhaustive.ts"

/** A pack of two boards of 2,000 and two of 1,200: 6,400 mm. */
const lengths = [
  { length: 2000, perPack: 2 },
  { length: 1200, perPack: 2 },
]
const limits: EndLimits = {
  boardLength: 2000,
  boardWidth: 189,
  kerf: 0,
  leastEnd: 300,
  stagger: 300,
  mix: lengths,
}

describe("boards of several lengths", () => {
  it("a run of 3,200 is laid of 2,000 and 1,200 whole, either first", () => {
    const ways = mixedPlaces(emptyFloor(lengths), plainRun(1, 3200), { ...limits, lengths }, 4)
    const joints = ways.filter((places) => places.length === 2).map((places) => places[1]!.left)
    expect(joints).toEqual(expect.arrayContaining([2000, 1200]))
    for (const places of ways) {
      expect(places[0]!.right - places[0]!.left).toBeGreaterThanOrEqual(300)
      expect(places.at(-1)!.right - places.at(-1)!.left).toBeGreaterThanOrEqual(300)
      for (const { role, left, right } of places)
        if (role === "whole") expect([2000, 1200]).toContain(right - left)
    }
  })

  it("two rows of 3,200 empty one pack: nothing is left and nothing is cut", () => {
    const plan = fillRuns([plainRun(1, 3200), plainRun(2, 3200)], limits)
    expect(plan).toMatchObject({ boards: 4, bound: 1, cuts: 0, breach: 0, offcuts: [] })
    expect([...plan.lengths].sort()).toEqual([1200, 1200, 2000, 2000])
  })

  it("joints keep the stagger from the row before", () => {
    const state = { ...emptyFloor(lengths), last: [2000] }
    for (const places of mixedPlaces(state, plainRun(2, 4400), { ...limits, lengths }, 8))
      for (const { left } of places.slice(1)) expect(Math.abs(left - 2000)).toBeGreaterThanOrEqual(300)
  })
})
