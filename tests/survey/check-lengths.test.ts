import { describe, expect, it } from "vitest"
import { checksToTape, usualShapes } from "../../src/survey/check-lengths.ts"
import { rulesOf, surveyed } from "../fixtures/rooms.ts"

describe("checksToTape", () => {
  it("asks one diagonal of four sides, and none of three: three lengths fix a triangle", () => {
    const four = [4000, 3000, 4000, 3000].map((length) => ({ length, turn: 90 }))
    expect(checksToTape(four, rulesOf())).toEqual([{ from: 1, to: 3 }])
    const three = [
      { length: 4000, turn: 126.87 },
      { length: 5000, turn: 143.13 },
      { length: 3000, turn: 90 },
    ]
    expect(checksToTape(three, rulesOf())).toEqual([])
  })

  it("asks what the survey then takes as fixed", () => {
    const checks = checksToTape(
      [
        { length: 6000, turn: 90 },
        { length: 5000, turn: 90 },
        { length: 2500, turn: 90 },
        { length: 2200, turn: -90 },
        { length: 3500, turn: 90 },
        { length: 2800, turn: 90 },
      ],
      rulesOf(),
    )
    // Corners of that L, clockwise from the door.
    const corners = [
      [0, 0],
      [6000, 0],
      [6000, -5000],
      [3500, -5000],
      [3500, -2800],
      [0, -2800],
    ] as const
    const room = surveyed({
      outline: [
        { length: 6000, turn: "right" },
        { length: 5000, turn: "right" },
        { length: 2500, turn: "right" },
        { length: 2200, turn: "left" },
        { length: 3500, turn: "right" },
        { length: 2800, turn: "right" },
      ],
      diagonals: checks.map(({ from, to }) => {
        const [a, b] = [corners[from - 1]!, corners[to - 1]!]
        return { from, to, length: Math.round(Math.hypot(a[0] - b[0], a[1] - b[1])) }
      }),
    })
    expect(room.trust.fixed).toBe(true)
    expect(room.findings).toEqual([])
  })

  it("has an answer for every usual shape", () => {
    for (const { corners, checks } of usualShapes(rulesOf())) {
      expect(checks.length).toBeGreaterThan(0)
      expect(checks.length).toBeLessThanOrEqual(corners - 3)
    }
  })
})
