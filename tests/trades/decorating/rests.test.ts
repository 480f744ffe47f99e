import { describe, expect, it } from "vitest"
import { decoratingRests, sheetRests } from "../../../src/trades/decorating/rests.ts"
import { roomPaint } from "../../../src/trades/decorating/room-paint.ts"
import { attic, paintRules } from "./attic.ts"

const rests = (written = {}) => {
  const task = attic(written)
  return decoratingRests(task, roomPaint(task))
}

describe("what a room's decorating rests on", () => {
  it("each id once, and each in the rulebook", () => {
    const ids = rests({ woodwork: { state: "bare", doors: "clear" } })
    expect(new Set(ids).size).toBe(ids.length)
    for (const id of ids) expect(paintRules().entry(id).id).toBe(id)
  })

  it("the maker's dilution puts the rule's aside", () => {
    expect(rests()).toContain("decor-mist-paint")
    expect(rests({ mist: { paint: 4, water: 1 } })).not.toContain("decor-mist-paint")
  })

  it("the sheet's foot names only what is behind its figures", () => {
    const task = attic()
    const foot = sheetRests(task, roomPaint(task))
    expect(foot.filter((id) => !rests().includes(id))).toEqual([])
    expect(foot).toEqual(expect.arrayContaining(["decor-void-deducted", "drying-emulsion-hours"]))
    expect(foot.filter((id) => /-out-|coldest|asbestos/.test(id))).toEqual([])
  })
})
