import { describe, expect, it } from "vitest"
import { plumbingWork } from "../../../src/trades/plumbing/work.ts"
import { radiator, task, wares } from "./rooms.ts"

describe("findings of plumbing", () => {
  const codes = (written: Record<string, unknown>, given = {}) =>
    plumbingWork(task(written, {}, given)).findings.map((each) => each.code)

  it("what fits has none", () => {
    expect(codes({ radiators: [radiator], sanitaryware: wares })).toEqual([])
  })

  it("a radiator off its wall, on no wall, higher than a dwarf wall", () => {
    expect(codes({ radiators: [{ ...radiator, width: 2100 }] })).toEqual(["radiator-off-wall"])
    expect(codes({ radiators: [{ ...radiator, wall: 8 }] })).toEqual(["no-such-wall"])
    const ceiling = { heights: [2400], slopes: [{ wall: 2, dwarf: 700, pitch: 45 }] }
    expect(codes({ radiators: [radiator] }, { ceiling })).toEqual(["radiator-above-wall"])
  })

  it("sanitaryware off its wall", () => {
    expect(codes({ sanitaryware: [{ kind: "bath", wall: 2, fromLeft: 1800, width: 1700 }] })).toEqual([
      "ware-off-wall",
    ])
  })
})
