import { describe, expect, it } from "vitest"
import { item, woodworkOf } from "../../../src/trades/decorating/woodwork.ts"
import { GIRTHS } from "../../facts/decorating.ts"
import { attic, moulding, paintRules } from "./attic.ts"

function wood(written: Record<string, unknown> = {}, facts = moulding) {
  const task = attic(written, facts)
  return woodworkOf({ room: task.room, input: task.input, facts: task.facts, rules: task.job.rules })
}

describe("painting measured by girth", () => {
  it.each(GIRTHS)("$what: by $billed, $area m2 ($source)", ({ length, girth, billed, area }) => {
    const found = item("frame", length, girth, paintRules())
    expect(found.billed).toBe(billed)
    expect(found.area).toBeCloseTo(area, 3)
  })
})

describe("woodwork of the attic room, by hand", () => {
  // Skirting: 14,000 round less the doorway 768 and two architraves with margins 2 x 75: 13.082 m, girth 145 + 18.
  // Architrave: 2 x 1,990 + 768 + 4 x 75 = 5.048 m, girth 69 + 2 x 18. Lining: 4.748 m of 120.
  // Leaf: face 0.768 x 1.990; edges 2 x (1,990 + 768) = 5.516 m of 44.
  it.each([
    ["Leaf D1, face", 0, 1.52832],
    ["Leaf D1, edges", 5.516, 0.242704],
    ["Lining D1", 4.748, 0.56976],
    ["Architrave D1", 5.048, 0.53004],
    ["Skirting", 13.082, 2.132366],
  ])("%s: %d m, %d m2", (what, length, area) => {
    const found = wood().find((each) => each.what === what)!
    expect(found.length).toBeCloseTo(length, 6)
    expect(found.area).toBeCloseTo(area, 6)
  })

  it("the room a leaf swings away from paints its face only", () => {
    const task = attic()
    const door = task.room.doors[0]!
    const other = { ...task.room, doors: [{ ...door, door: { ...door.door, swingsInto: "L1" } }] }
    const what = woodworkOf({ room: other, input: task.input, facts: moulding, rules: task.job.rules }).map(
      (each) => each.what,
    )
    expect(what).toEqual(["Leaf D1, face", "Architrave D1", "Skirting"])
  })

  it("leaves what the author leaves out, and adds what the author adds", () => {
    expect(wood({ woodwork: { state: "none" } })).toEqual([])
    expect(wood({ woodwork: { except: ["D1"] } }).map((each) => each.what)).toEqual(["Skirting"])
    const board = wood({ woodwork: { other: [{ what: "window board", length: 900, girth: 240 }] } }).at(-1)!
    expect(board).toMatchObject({ what: "window board", length: 0.9 })
    expect(board.area).toBeCloseTo(0.216, 9)
  })
})
