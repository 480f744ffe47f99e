import { describe, expect, it } from "vitest"
import { meetings, tiledBuildUp } from "../../../src/trades/tiling/levels.ts"
import { thresholdText } from "../../../src/trades/tiling/sheet.ts"
import { tilingFacts } from "../../../src/trades/tiling/work.ts"
import { task } from "./wash-room.ts"

describe("a tiled floor", () => {
  it("is tile, bed and board thick, or as written; meets oak with a step of 6", () => {
    const given = task({ floor: true })
    expect(tiledBuildUp(given)).toBe(13)
    expect(tiledBuildUp(task({ floor: true, board: 6 }))).toBe(19)
    expect(tilingFacts(given)).toEqual({ floorFinish: "tile", floorBuildUp: 13 })
    expect(meetings(given)).toEqual([{ door: "D1", room: "A1", finish: "oak", tile: 13, other: 19, step: 6 }])
    expect(thresholdText({ step: 6, finish: "oak" })).toMatch(/6 mm step, oak higher/)
    expect(thresholdText({ step: 0, finish: "oak" })).toMatch(/Level/)
  })
})
