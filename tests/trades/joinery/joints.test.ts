import { describe, expect, it } from "vitest"
import { jointsOf, partsOf } from "../../../src/trades/joinery/joints.ts"

const task = { from: 18, to: 6000, longest: 3300, overlap: 18, spacing: 600, clear: 600 }

describe("joints in a run", () => {
  it("come over the furthest fixing that one board reaches", () => {
    // 18 + 3,300 - 9 = 3,309: the last fixing before it stands at 3,000
    expect(jointsOf(task)).toEqual({ at: [3000], overFixing: true })
    // left 3,000 + 9 - 18 = 2,991; right 6,000 - 3,000 + 9 = 3,009; together 5,982 and one overlap
    expect(partsOf(task, [3000])).toEqual([2991, 3009])
  })

  it("are none where one board reaches", () => {
    expect(jointsOf({ ...task, to: 3318 })).toEqual({ at: [], overFixing: true })
    expect(jointsOf({ ...task, to: 3319 }).at).toHaveLength(1)
  })

  it("share the run equally over blocks where fixings would ask for one joint more", () => {
    // two boards of 3,300 and one overlap make 6,582; from 18 that reaches 6,600: no fixing lies where both fit
    const joints = jointsOf({ ...task, to: 6599 })
    expect(joints.overFixing).toBe(false)
    const parts = partsOf({ ...task, to: 6599 }, joints.at)
    expect(parts).toHaveLength(2)
    expect(parts[0]).toBeCloseTo(parts[1]!, 9)
    expect(parts[0]).toBeLessThanOrEqual(3300)
  })

  it("stand clear of the ends and of each other, fit the boards and close the run, in generated runs", () => {
    for (let index = 0; index < 2000; index++) {
      const run = {
        from: (index * 37) % 900,
        to: 0,
        longest: 1900 + ((index * 53) % 2500),
        overlap: 6 + (index % 20),
        spacing: index % 2 === 0 ? 400 : 600,
        clear: 600,
      }
      run.to = run.from + 700 + ((index * 977) % 14_000)
      const joints = jointsOf(run)
      const parts = partsOf(run, joints.at)
      const total = parts.reduce((sum, part) => sum + part, 0) - run.overlap * joints.at.length
      expect(total).toBeCloseTo(run.to - run.from, 6)
      for (const part of parts) expect(part).toBeLessThanOrEqual(run.longest + 1e-6)
      const stops = [run.from, ...joints.at, run.to]
      for (let place = 1; place < stops.length; place++)
        expect(stops[place]! - stops[place - 1]!).toBeGreaterThanOrEqual(
          joints.at.length === 0 ? 0 : 600 - 1e-6,
        )
      if (joints.overFixing) for (const at of joints.at) expect(at % run.spacing).toBe(0)
    }
  })
})
