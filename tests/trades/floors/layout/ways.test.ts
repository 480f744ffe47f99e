import { describe, expect, it } from "vitest"
import type { EndLimits } from "../../../../src/trades/floors/layout/end-plan.ts"
import { fillRuns } from "../../../../src/trades/floors/layout/ends.ts"
import { waysJointed, waysSingle, worthLeaving } from "../../../../src/trades/floors/layout/ways.ts"
import { plainRun, rippedRun } from "./exhaustive.ts"

const limits: EndLimits = { boardLength: 1000, boardWidth: 400, kerf: 0, leastEnd: 200, stagger: 200 }
const demand = { length: 3000, groove: 0, tongue: 0 }

describe("how the pieces of a run may be taken", () => {
  const ripped = rippedRun(1, 1050, { keeps: "tongue", width: 250 }, 400)
  const runs = [ripped, plainRun(2, 1350), rippedRun(3, 1350, { keeps: "groove", width: 100 }, 400)]
  const leaving = worthLeaving(runs, limits)

  it("a board may be cut at what another ripped row wants, and at what leaves a full row its rest", () => {
    /* Row 3 is 1,350: 350 past a whole board. Row 2 the same: 1,000 - 350 = 650 leaves it its 350. */
    expect(leaving.firstCuts).toEqual(expect.arrayContaining([350, 650]))
  })

  it("in the last row that takes a strip pieces are cut as they come", () => {
    const places = [
      { left: 0, right: 500, role: "start" as const },
      { left: 500, right: 1050, role: "finish" as const },
    ]
    expect(waysJointed(ripped, places, { demand, leaving, hard: true })).toEqual([[{}, {}]])
    const wanted = { ...demand, groove: 1350 }
    expect(waysJointed(ripped, places, { demand: wanted, leaving, hard: true }).length).toBeGreaterThan(4)
    expect(waysJointed(ripped, places, { demand: wanted, leaving, hard: false })).toHaveLength(2)
  })

  it("a piece from wall to wall is cut off either end, or out of the middle", () => {
    const ways = waysSingle(plainRun(1, 350), {
      demand,
      leaving: { firstCuts: [], besideSingles: [350] },
      hard: true,
    })
    expect(ways).toEqual([{ fromRight: false }, { fromRight: true }, { leave: 350 }])
  })
})

describe("what so is saved, by hand", () => {
  it("350 out of the middle of a board leaves 350 to end the next row and 300 to begin it: 650 from the same board", () => {
    /* One board: 350 (left end, finish) + 350 (middle) + 300 (right end, start). */
    expect(fillRuns([plainRun(1, 350), plainRun(2, 650)], limits).boards).toBe(1)
  })

  it("strips of 250 and 100 and a full row: three boards, the first cut across before it is ripped", () => {
    const runs = [
      rippedRun(1, 1050, { keeps: "tongue", width: 250 }, 400),
      plainRun(2, 1350),
      rippedRun(3, 1350, { keeps: "groove", width: 100 }, 400),
    ]
    expect(fillRuns(runs, limits)).toMatchObject({ boards: 3, bound: 3, breach: 0 })
  })
})
