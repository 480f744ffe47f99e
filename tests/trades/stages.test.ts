import { expect, it } from "vitest"
import { stageRank, stages } from "../../src/trades/stages.ts"

it("finishing goes from plaster to paint to wood to the last coat, stairs last (common practice)", () => {
  const order = [
    "dry-out",
    "mist",
    "white",
    "heat",
    "floor",
    "hang",
    "second-fix",
    "fill",
    "woodwork",
    "last-coat",
    "covers-off",
    "oil",
    "nosings",
  ] as const
  const ranks = order.map(stageRank)
  expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
  expect(new Set(stages).size).toBe(stages.length)
})
