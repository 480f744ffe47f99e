import { describe, expect, it } from "vitest"
import { holeFor, hungRadiators } from "../../../src/trades/plumbing/radiators.ts"
import { HOLES } from "../../facts/services.ts"
import { radiator, task } from "./rooms.ts"

describe("pipes through the floor", () => {
  it.each(HOLES)("$what: hole $value ($source)", ({ pipe, gap, value }) => {
    expect(holeFor(pipe, gap)).toBe(value)
  })

  it("a radiator by hand: foot 150, top 750, pipes 40 beyond both ends, hole 15 + 2 × 12 = 39", () => {
    const [hung] = hungRadiators(task({ radiators: [radiator] }))
    expect(hung).toMatchObject({ foot: 150, top: 750, tails: [860, 1940], tailsOff: 55, hole: 39, gap: 12 })
  })

  it("without a floor's own gap the rule's is taken; pipes as written go first", () => {
    const [hung] = hungRadiators(task({ radiators: [{ ...radiator, tails: [1350, 1400] }] }, {}))
    expect(hung).toMatchObject({ hole: 35, tails: [1350, 1400] })
  })
})
