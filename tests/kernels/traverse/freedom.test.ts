import { describe, expect, it } from "vitest"
import { solveOutline } from "../../../src/kernels/traverse/solve-outline.ts"
import type { Check, Run } from "../../../src/kernels/traverse/survey.ts"
import { seeded } from "../polygon/outlines.ts"
import { tapedRoom, tolerances } from "./rooms.ts"

const room = (lengths: number[], checks: Check[], measured = false) => {
  const runs = lengths.map((length): Run => ({ length, turn: 90, measured }))
  return solveOutline({ runs, checks, tolerances })
}

describe("what fixes a shape", () => {
  it("asks four sides for one diagonal (a four-bar linkage has one freedom), and is content with it", () => {
    const four = room([3940, 4860, 3952, 4846], [])
    expect([four.fixed, four.freedoms, four.needs]).toEqual([false, 1, [{ from: 0, to: 2 }]])
    const braced = room([3940, 4860, 3952, 4846], [{ from: 0, to: 2, length: 6262 }])
    expect([braced.fixed, braced.freedoms, braced.needs]).toEqual([true, 0, []])
  })

  it("says how loose: 4,000 x 3,000 with corners free by 2 degrees each way, a linkage where all four lean together", () => {
    // Leaning by t, the diagonal of 5,000 changes by 4,000 x 3,000 / 5,000 x t. Four corners agreeing on one lean know it twice as well: 1 degree.
    const { looseness } = room([4000, 3000, 4000, 3000], [])
    expect(Math.abs(looseness - ((4000 * 3000) / 5000) * (Math.PI / 180))).toBeLessThan(1)
  })

  it("takes three sides as fixed, and four with one measured turn", () => {
    const runs = [3000, 4000, 5000].map((length, i): Run => ({ length, turn: [90, 143.13, 126.87][i]! }))
    expect(solveOutline({ runs, checks: [], tolerances }).fixed).toBe(true)
    const four = [4000, 3000, 4000, 3000].map((length, i): Run => ({ length, turn: 90, measured: i === 1 }))
    expect(solveOutline({ runs: four, checks: [], tolerances }).fixed).toBe(true)
  })

  it("counts n - 3 freedoms for n taped walls, and asks for as many checks, which do fix it: 60 generated rooms", () => {
    const random = seeded(4)
    for (let count = 0; count < 60; count++) {
      const bare = solveOutline(tapedRoom(random, -1).survey)
      expect(bare.freedoms).toBe(bare.corners.length - 3)
      expect(bare.needs).toHaveLength(bare.freedoms)
      const braced = solveOutline(tapedRoom(random, 0).survey)
      expect([braced.fixed, braced.freedoms]).toEqual([true, 0])
    }
  })

  it("lets a shape pass as fixed within a stated looseness", () => {
    const runs = [4000, 3000, 4000, 3000].map((length): Run => ({ length, turn: 90 }))
    const at = (shape: number) => solveOutline({ runs, checks: [], tolerances: { ...tolerances, shape } })
    expect([at(30).fixed, at(60).fixed, at(60).freedoms]).toEqual([false, true, 1])
  })
})
