import { describe, expect, it } from "vitest"
import { joineryQuantities } from "../../../src/trades/joinery/quantities.ts"
import { roomPieces } from "../../../src/trades/joinery/work.ts"
import { joineryTask } from "./task.ts"

describe("joinery quantities", () => {
  it("count adhesive by the run of skirting, where a product is chosen for it", () => {
    const task = joineryTask({}, { chosen: { "grab-adhesive": "glue" } })
    const { skirtings } = roomPieces(task)
    const list = joineryQuantities(task, [{ what: "Skirting", pieces: skirtings }], skirtings)
    const run = skirtings.reduce((sum, piece) => sum + piece.length, 0) / 1000
    expect(list.map((each) => each.what)).toEqual(["Skirting", "Grab adhesive"])
    // one cartridge of 290 to 310 ml in 6 to 8 m (common practice)
    expect(list[1]!.net).toBeGreaterThan(run / 8)
    expect(list[1]!.net).toBeLessThan(run / 6)
    expect(joineryQuantities(joineryTask(), [], skirtings)).toEqual([])
  })
})
