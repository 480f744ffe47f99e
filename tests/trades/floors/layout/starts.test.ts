import { describe, expect, it } from "vitest"
import type { EndLimits, Run } from "../../../../src/trades/floors/layout/end-plan.ts"
import { emptyFloor } from "../../../../src/trades/floors/layout/floor-state.ts"
import { startLengths } from "../../../../src/trades/floors/layout/starts.ts"

const limits: EndLimits = { boardLength: 1860, boardWidth: 189, kerf: 3, leastEnd: 300, stagger: 300 }
const run: Run = { row: 2, name: "2", left: 0, right: 3000, profile: null }

describe("starter lengths that are tried", () => {
  it("each leaves both ends long enough", () => {
    const starts = startLengths(emptyFloor([{ length: 1860, perPack: 1 }]), run, limits, 10)
    expect(starts.length).toBeGreaterThan(5)
    for (const start of starts) {
      expect(start).toBeGreaterThanOrEqual(300)
      const rest = (3000 - start) % 1860 || 1860
      expect(rest).toBeGreaterThanOrEqual(300)
    }
  })

  it("each keeps its joints from those of the last row", () => {
    const starts = startLengths(
      { ...emptyFloor([{ length: 1860, perPack: 1 }]), last: [1000] },
      run,
      limits,
      10,
    )
    for (const start of starts) {
      for (let joint = start; joint < 3000; joint += 1860)
        expect(Math.abs(joint - 1000)).toBeGreaterThanOrEqual(300)
    }
  })

  it("an offcut in hand is tried as it is", () => {
    const offcut = { board: 1, room: null, of: 1860, from: 1123, to: 1860, low: 0, high: 189, mark: "1R" }
    expect(
      startLengths({ ...emptyFloor([{ length: 1860, perPack: 1 }]), offcuts: [offcut] }, run, limits, 10),
    ).toContain(737)
  })

  it("where no start keeps the rules, all are given back", () => {
    const short: Run = { ...run, right: 500 }
    expect(
      startLengths(emptyFloor([{ length: 1860, perPack: 1 }]), short, limits, 10).length,
    ).toBeGreaterThan(0)
  })
})
