import { describe, expect, it } from "vitest"
import { adjusted, costOf, costWithin } from "../../../src/kernels/traverse/adjust.ts"
import { equationsOf } from "../../../src/kernels/traverse/equations.ts"
import { runLengths, shutWalk } from "../../../src/kernels/traverse/walk.ts"
import { seeded } from "../polygon/outlines.ts"
import { tapedRoom, withMisread } from "./rooms.ts"

describe("adjustment", () => {
  it("is a lowest point: no small push of any corner costs less, in 100 generated rooms", () => {
    const random = seeded(31)
    for (let count = 0; count < 100; count++) {
      const { survey } = tapedRoom(random, 1)
      const equations = equationsOf(survey)
      const { corners, cost } = adjusted(shutWalk(survey.runs), equations)
      expect(cost).toBeLessThanOrEqual(costWithin(equations))
      for (const corner of corners.keys()) {
        for (const [x, y] of [
          [0.05, 0],
          [-0.05, 0],
          [0, 0.05],
          [0, -0.05],
        ]) {
          const pushed = corners.map((at, i) => (i === corner ? { x: at.x + x!, y: at.y + y! } : at))
          expect(costOf(pushed, equations)).toBeGreaterThanOrEqual(cost - 1e-6)
        }
      }
    }
  })

  it("holds runs within their tolerance even against checks a metre out", () => {
    const random = seeded(32)
    for (let count = 0; count < 100; count++) {
      const { survey, wrong } = withMisread(random, tapedRoom(random, 1).survey)
      if (wrong.kind !== "check") continue
      const { corners } = adjusted(shutWalk(survey.runs), equationsOf(survey))
      for (const [index, length] of runLengths(corners).entries()) {
        expect(Math.abs(length - survey.runs[index]!.length)).toBeLessThanOrEqual(survey.tolerances.length)
      }
    }
  })
})
