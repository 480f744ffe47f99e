import { describe, expect, it } from "vitest"
import { planFloor } from "../../../src/trades/floors/plan-floor.ts"
import { doorBetween, floorTask } from "./fixture.ts"

const planOf = (wall: number, inWall: number) =>
  planFloor(
    floorTask({
      input: { along: 1 },
      room: { doors: [{ door: "D1", wall: inWall, fromLeft: 1000 }] },
      doors: [doorBetween({ wall, swingsInto: "HALL" })],
    }),
  ).plan!

describe("loose tongue", () => {
  it("none where no doorway opens through the first row's wall, nor where row 1 reaches into it", () => {
    expect(planOf(300, 3).looseTongue).toBe(0)
    expect(planOf(60, 1).looseTongue).toBe(0)
  })

  /* A wall 300 thick floored to 22 short of its far face, less the gap of 10: 268 of boards behind row 1's wall, more than one row. The
     doorway between linings is 768 wide, and boards run 8 under the linings at each side: 784. */
  it("as long as the rows wholly inside a deep doorway", () => {
    const { looseTongue, layout } = planOf(300, 1)
    expect(looseTongue).toBeGreaterThan(0)
    expect(looseTongue / 784).toBeCloseTo(Math.round(looseTongue / 784), 6)
    expect(layout.rows[0]!.runs[0]!.right - layout.rows[0]!.runs[0]!.left).toBeCloseTo(784, 6)
  })
})
