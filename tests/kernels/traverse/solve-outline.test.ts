import { describe, expect, it } from "vitest"
import { interiorAngles } from "../../../src/kernels/polygon/angles.ts"
import { area } from "../../../src/kernels/polygon/measure.ts"
import { distance, mirrored } from "../../../src/kernels/polygon/point.ts"
import { solveOutline } from "../../../src/kernels/traverse/solve-outline.ts"
import type { Check, Run } from "../../../src/kernels/traverse/survey.ts"
import { seeded } from "../polygon/outlines.ts"
import { tapedRoom, tolerances } from "./rooms.ts"

/** The angle between two sides of a triangle from all three: the cosine rule. */
function cosineRule(a: number, b: number, opposite: number): number {
  return (Math.acos((a * a + b * b - opposite * opposite) / (2 * a * b)) * 180) / Math.PI
}

/** Area of a triangle from its sides (Heron). */
function triangle(a: number, b: number, c: number): number {
  const half = (a + b + c) / 2
  return Math.sqrt(half * (half - a) * (half - b) * (half - c))
}

const quadrilaterals = [
  { sides: [3940, 4860, 3952, 4846], diagonal: 6262 },
  { sides: [3120, 2680, 3105, 2694], diagonal: 4118 },
  { sides: [3498, 3010, 3520, 3018], diagonal: 4625 },
] as const

describe("four walls and a diagonal, against the cosine rule by hand", () => {
  it.each(quadrilaterals)("$sides with $diagonal", ({ sides, diagonal }) => {
    const [a, b, c, d] = sides
    const runs = sides.map((length): Run => ({ length, turn: 90 }))
    const found = solveOutline({ runs, checks: [{ from: 0, to: 2, length: diagonal }], tolerances })
    const angles = interiorAngles(found.corners)
    // Corner 1 lies between a and b, opposite the diagonal; corner 3 between c and d; corner 0 is shared by both triangles.
    expect(Math.abs(angles[1]! - cosineRule(a, b, diagonal))).toBeLessThan(0.02)
    expect(Math.abs(angles[3]! - cosineRule(c, d, diagonal))).toBeLessThan(0.02)
    const zero = cosineRule(a, diagonal, b) + cosineRule(d, diagonal, c)
    expect(Math.abs(angles[0]! - zero)).toBeLessThan(0.02)
    const byHand = triangle(a, b, diagonal) + triangle(c, d, diagonal)
    expect(Math.abs(area(found.corners) - byHand) / byHand).toBeLessThan(2e-4)
    expect(found.ok && found.fixed).toBe(true)
    for (const { residual } of found.residuals.filter(({ kind }) => kind !== "turn")) {
      expect(Math.abs(residual)).toBeLessThan(0.5)
    }
  })

  it("is exact where measurements agree exactly: 3-4-5", () => {
    const runs = [4000, 3000, 4000, 3000].map((length): Run => ({ length, turn: 90 }))
    const { corners, residuals } = solveOutline({
      runs,
      checks: [{ from: 0, to: 2, length: 5000 }],
      tolerances,
    })
    expect(area(corners)).toBeCloseTo(12_000_000, 3)
    for (const { residual } of residuals) expect(residual).toBeCloseTo(0, 6)
  })
})

describe("which measurements give way", () => {
  it("bends assumed turns, not the tape: opposite walls of 3,940 and 3,952 are normal", () => {
    const runs = [3940, 4860, 3952, 4846].map((length): Run => ({ length, turn: 90 }))
    const { ok, lengths, turns, misclosure, method } = solveOutline({ runs, checks: [], tolerances })
    expect([ok, method]).toEqual([true, "least bending"])
    for (const [index, length] of lengths.entries())
      expect(Math.abs(length - runs[index]!.length)).toBeLessThan(0.1)
    expect(Math.max(...turns.map((turn) => Math.abs(turn - 90)))).toBeGreaterThan(0.1)
    expect(Math.round(misclosure.gap)).toBe(18)
  })

  it("keeps a measured turn of 87 beside assumed ones", () => {
    const runs: Run[] = [
      { length: 3940, turn: 90 },
      { length: 1800, turn: 90 },
      { length: 345, turn: -87, measured: true },
      { length: 1260, turn: -93, measured: true },
      { length: 345, turn: 90 },
      { length: 1800, turn: 90 },
      { length: 3952, turn: 90 },
      { length: 4846, turn: 90 },
    ]
    const { turns, ok } = solveOutline({ runs, checks: [{ from: 0, to: 6, length: 6262 }], tolerances })
    expect(ok).toBe(true)
    expect(Math.abs(turns[2]! + 87)).toBeLessThanOrEqual(tolerances.measuredTurn)
    expect(Math.abs(turns[3]! + 93)).toBeLessThanOrEqual(tolerances.measuredTurn)
  })

  it("uses the compass rule where every turn was measured and nothing else checks it, never otherwise", () => {
    const runs = [4000, 3001, 4001, 3000].map((length): Run => ({ length, turn: 90, measured: true }))
    const { method, corners } = solveOutline({ runs, checks: [], tolerances })
    expect(method).toBe("compass rule")
    // The gap is 1 by 1; each leg takes its share of it: 4,000 / 14,002.
    expect(distance(corners[0]!, corners[1]!)).toBeCloseTo(4000 + 4000 / 14_002, 3)
    const assumed = runs.map((run, i) => ({ ...run, measured: i > 0 }))
    expect(solveOutline({ runs: assumed, checks: [], tolerances }).method).toBe("least bending")
  })

  it("finds the true shape of 200 generated rooms with a check to spare, all within tolerance, whatever corner is first", () => {
    const random = seeded(17)
    for (let count = 0; count < 200; count++) {
      const { corners, survey } = tapedRoom(random, 1)
      const found = solveOutline(survey)
      expect(found.ok && found.fixed).toBe(true)
      expect(Math.abs(area(found.corners) - area(corners)) / area(corners)).toBeLessThan(0.003)
      const last = survey.runs.length - 1
      const around = (corner: number) => (corner + last) % survey.runs.length
      const shifted = solveOutline({
        ...survey,
        runs: [...survey.runs.slice(1), survey.runs[0]!],
        checks: survey.checks.map((check) => ({ ...check, from: around(check.from), to: around(check.to) })),
      })
      expect(Math.abs(area(shifted.corners) - area(found.corners))).toBeLessThan(20)
      expect(Math.abs(shifted.lengths[last]! - found.lengths[0]!)).toBeLessThan(0.01)
    }
  })

  it("gives the mirror image for a walk read from behind", () => {
    const { survey } = tapedRoom(seeded(23), 1)
    const count = survey.runs.length
    const other = (corner: number) => (count - corner) % count
    const back = survey.runs.map((_, i): Run => {
      return {
        length: survey.runs[count - 1 - i]!.length,
        turn: survey.runs[(2 * count - 2 - i) % count]!.turn,
      }
    })
    const checks = survey.checks.map(
      (check): Check => ({ ...check, from: other(check.from), to: other(check.to) }),
    )
    const found = solveOutline(survey)
    const mirror = solveOutline({ ...survey, runs: back, checks })
    expect(area(mirrored(mirror.corners))).toBeCloseTo(area(found.corners), 0)
  })
})

describe("a survey that cannot be", () => {
  it("leaves the walk open when no outline closes with the lengths as taped, and moves none of them", () => {
    const runs = [13_940, 4860, 3952, 4846].map((length): Run => ({ length, turn: 90 }))
    const found = solveOutline({ runs, checks: [], tolerances })
    expect([found.closes, found.ok]).toEqual([false, false])
    expect(found.lengths).toEqual([13_940, 4860, 3952, 4846])
    expect(Math.round(found.misclosure.x)).toBe(9988)
    expect(found.suspects.map(({ index }) => index).sort()).toEqual([0, 2])
  })

  it("is pure: the same survey gives the same solution and is left as it was", () => {
    const { survey } = tapedRoom(seeded(6), 1)
    const before = structuredClone(survey)
    expect(solveOutline(survey)).toEqual(solveOutline(survey))
    expect(survey).toEqual(before)
  })
})
