import { describe, expect, it } from "vitest"
import { headroomAt, headroomWidth } from "../../src/kernels/headroom.ts"
import { area } from "../../src/kernels/polygon/measure.ts"
import { type SectionSurvey, solveSection } from "../../src/kernels/section.ts"
import { seeded, whole } from "./polygon/outlines.ts"

const tolerances = { length: 4, pitch: 0.5 }
/** Slopes of 1,500 that run 1,200 and rise 900 (3-4-5) over walls of 1,000, a flat of 1,600: floor 4,000, ceiling 1,900. */
const pitch = (Math.atan2(3, 4) * 180) / Math.PI
const side = { sloped: true, wall: 1000, slope: 1500, pitch }
const exact: SectionSurvey = { left: side, right: side, flat: 1600, floor: 4000, ceiling: 1900, tolerances }

describe("a section by hand", () => {
  it("comes out exactly where all figures agree", () => {
    const { profile, residuals, misclosure, ok } = solveSection(exact)
    expect(profile.map(({ x, y }) => [Math.round(x * 1e4) / 1e4, Math.round(y * 1e4) / 1e4])).toEqual([
      [0, 0],
      [0, 1000],
      [1200, 1900],
      [2800, 1900],
      [4000, 1000],
      [4000, 0],
    ])
    // 4,000 x 1,000 below, and a trapezium of 4,000 and 1,600 wide, 900 high.
    expect(area(profile)).toBeCloseTo(4_000_000 + (900 * (4000 + 1600)) / 2, 1)
    expect(misclosure).toBeCloseTo(0, 9)
    expect(ok).toBe(true)
    for (const { residual } of residuals) expect(Math.abs(residual)).toBeLessThan(1e-6)
  })

  it("gives headroom across: 1,500 is 500 up slopes that run 4 for 3, so 666.7 in from each side", () => {
    const { profile } = solveSection(exact)
    expect(headroomWidth(profile, 1500)).toBeCloseTo(4000 - (2 * 500 * 4) / 3, 3)
    expect(headroomAt(profile, 1500)[0]!.from).toBeCloseTo(666.667, 2)
    expect(headroomWidth(profile, 1900)).toBeCloseTo(1600, 2)
    expect(headroomWidth(profile, 1901)).toBe(0)
    expect(headroomWidth(profile, 900)).toBeCloseTo(4000, 6)
  })

  it("knows a lean-to without a flat: 980 falling to 278 over 780 is a slope of 1,049 at 42 degrees", () => {
    const { profile, ok, residuals } = solveSection({
      left: { sloped: false, wall: 980 },
      right: { sloped: true, wall: 278, pitch: 42, slope: 1049 },
      flat: 0,
      floor: 780,
      tolerances,
    })
    expect(ok).toBe(true)
    expect(profile).toHaveLength(4)
    expect(residuals.map(({ figure }) => figure)).toEqual([
      "left wall",
      "right wall",
      "right slope",
      "right pitch",
      "floor",
    ])
    expect(headroomWidth(profile, 1500)).toBe(0)
  })
})

describe("closure", () => {
  it("shares a small error among the figures, each within its tolerance", () => {
    const { ok, misclosure, residuals } = solveSection({ ...exact, floor: 4006 })
    expect(misclosure).toBeCloseTo(6, 9)
    expect(ok).toBe(true)
    expect(residuals.find(({ figure }) => figure === "floor")!.residual).toBeLessThan(0)
  })

  it("names the figure that alone does not agree: a floor read 100 too long", () => {
    const { ok, suspects } = solveSection({ ...exact, floor: 4100 })
    expect(ok).toBe(false)
    const floor = suspects.find(({ figure }) => figure === "floor")
    expect(floor?.read).toBe(4100)
    expect(floor?.meant).toBeCloseTo(4000, 3)
  })

  it("says which figures would fix a section that is not fixed", () => {
    const { fixed, needs, profile } = solveSection({
      left: { sloped: true, wall: 1000, pitch: 42 },
      right: { sloped: false, wall: 2000 },
      floor: 3000,
      tolerances,
    })
    expect([fixed, needs]).toEqual([true, []])
    expect(profile).not.toEqual([])
    const loose = solveSection({
      left: { sloped: true, wall: 1000 },
      right: { sloped: false, wall: 2000 },
      floor: 3000,
      tolerances,
    })
    expect([loose.fixed, loose.profile]).toEqual([false, []])
    expect(loose.needs).toEqual(["left slope", "left pitch", "flat"])
  })
})

describe("150 generated sections", () => {
  it("come out true from figures taped a little wrong, and the misread figure is among the suspects", () => {
    const random = seeded(9)
    let named = 0
    for (let count = 0; count < 150; count++) {
      const [wall, rise, run, flat] = [
        whole(random, 300, 1200),
        whole(random, 500, 1500),
        whole(random, 600, 1600),
        whole(random, 900, 2600),
      ]
      const near = (size: number) => Math.round(size + (random() - 0.5) * 3)
      const slope = Math.hypot(run, rise)
      const degrees = Math.round(((Math.atan2(rise, run) * 180) / Math.PI) * 5) / 5
      const taped = () => ({ sloped: true, wall: near(wall), slope: near(slope), pitch: degrees })
      const survey: SectionSurvey = {
        left: taped(),
        right: taped(),
        flat: near(flat),
        floor: near(flat + 2 * run),
        ceiling: near(wall + rise),
        tolerances,
      }
      const { profile, ok } = solveSection(survey)
      expect(ok).toBe(true)
      expect(Math.abs(profile[2]!.y - wall - rise)).toBeLessThan(4)
      const wrong = solveSection({ ...survey, flat: survey.flat! + 1000 })
      expect(wrong.ok).toBe(false)
      if (wrong.suspects.some(({ figure, meant }) => figure === "flat" && Math.abs(meant - flat) < 20))
        named++
    }
    expect(named).toBe(150)
  })
})
