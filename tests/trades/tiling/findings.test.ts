import { describe, expect, it } from "vitest"
import { tilingWork } from "../../../src/trades/tiling/work.ts"
import { task } from "./wash-room.ts"

describe("findings of tiling", () => {
  const codes = (written: Record<string, unknown>) =>
    tilingWork(task(written)).findings.map((each) => each.code)

  it("no such wall, off the wall, above the wall, a narrow cut", () => {
    expect(codes({ walls: [{ wall: 9, top: 2000 }] })).toEqual(["no-such-wall"])
    expect(codes({ walls: [{ wall: 2, from: 100, to: 1700, top: 2000 }] })).toEqual(["tiling-off-wall"])
    expect(codes({ walls: [{ wall: 2, top: 2300 }] })).toContain("tiling-above-wall")
    // 1,700 - 5 = 1,695 less 4 × 401 leaves a row of 91.
    expect(codes({ walls: [{ wall: 2, top: 1700 }] })).toEqual(["narrow-cut"])
  })

  it("no tile chosen", () => {
    const given = task({ walls: [{ wall: 2, top: 2000 }] })
    const bare = { ...given, job: { ...given.job, chosen: () => undefined } }
    expect(tilingWork(bare).findings.map((each) => each.code)).toEqual(["no-tile-chosen"])
  })
})
