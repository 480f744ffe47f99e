import { describe, expect, it } from "vitest"
import {
  equationsOf,
  gradientIn,
  residualIn,
  unknownsOf,
  valueIn,
} from "../../../src/kernels/traverse/equations.ts"
import { seeded } from "../polygon/outlines.ts"
import { tapedRoom } from "./rooms.ts"

describe("measurements as equations", () => {
  it("change with the corners as a small push shows, in 50 generated rooms", () => {
    const random = seeded(8)
    const push = 0.01
    for (let count = 0; count < 50; count++) {
      const { corners, survey } = tapedRoom(random, 1)
      for (const equation of equationsOf(survey)) {
        const row = gradientIn(corners, equation)
        const rates = new Float64Array(unknownsOf(corners.length))
        for (const [i, place] of row.places.entries()) rates[place]! += row.factors[i]!
        for (const [place, rate] of rates.entries()) {
          const corner = place === 0 ? 1 : Math.floor((place + 3) / 2)
          const axis = place === 0 || place % 2 === 1 ? "x" : "y"
          const at = (by: number) =>
            corners.map((point, i) => (i === corner ? { ...point, [axis]: point[axis] + by } : point))
          const measured = (valueIn(at(push), equation) - valueIn(at(-push), equation)) / (2 * push)
          expect(Math.abs(measured - rate)).toBeLessThan(1e-5)
        }
      }
    }
  })

  it("takes a turn the short way round: 179 read, -179 there, is 2 off", () => {
    const radians = (179 * Math.PI) / 180
    const corners = [
      { x: 0, y: 0 },
      { x: 1000, y: 0 },
      { x: 1000 + 1000 * Math.cos(radians), y: 1000 * Math.sin(radians) },
    ]
    const turn = {
      kind: "turn",
      index: 0,
      read: 179,
      tolerance: 2,
      corners: [0, 1, 2],
      assumed: true,
    } as const
    expect(residualIn(corners, turn)).toBeCloseTo(2, 9)
  })
})
