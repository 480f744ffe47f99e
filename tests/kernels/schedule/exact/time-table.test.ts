import { describe, expect, it } from "vitest"
import { BoundTrail, NO_REASON } from "../../../../src/kernels/schedule/exact/bound-trail.ts"
import { TimeTable } from "../../../../src/kernels/schedule/exact/time-table.ts"
import { compiled } from "../../../../src/kernels/schedule/problem.ts"

/** Two activities of 4 that each hold 2 of 3 units, and ranges of starts for both. */
function setUp(first: [number, number], last: [number, number]) {
  const problem = compiled({
    activities: [
      { id: "a", duration: 4, demand: [2], after: [] },
      { id: "b", duration: 4, demand: [2], after: [] },
    ],
    capacities: [3],
  })
  const trail = new BoundTrail(Int32Array.from(first), Int32Array.from(last))
  const table = new TimeTable(problem, trail, 20)
  const raised: string[] = []
  const filter = () =>
    table.filter((key, w, reason) => {
      if (trail.value[key]! < w) {
        const because = reason.map((literal) => `${trail.keyOf[literal]}:${trail.worth(literal)}`).sort()
        raised.push(`${key}:${w} because ${because.join(" ")}`)
        trail.raise(key, w, NO_REASON)
      }
      return true
    })
  return { trail, table, raised, filter }
}

describe("time-table", () => {
  it("moves a start behind what runs for sure, with a moment as the reason", () => {
    // a starts 2 to 4, so it runs from 4 to 6 for sure; b starts 1 to 12: at 1 it would run at 4, so it starts at 6 or later
    const { raised, filter } = setUp([2, 1], [4, 12])
    filter()
    // the last moment of a start at 1 is 4: b starts at 5 or later; then its moment 5: 6 or later
    expect(raised).toEqual(["2:5 because 0:2 1:-4 2:1", "2:6 because 0:2 1:-4 2:2"])
  })

  it("moves a finish before what runs for sure", () => {
    // a runs from 10 to 12 for sure; b starts 0 to 11: 11 would run at 11, so it starts at 6 or sooner
    const { raised, filter } = setUp([8, 0], [10, 11])
    filter()
    expect(raised.map((text) => text.split(" ")[0])).toEqual(["3:-7", "3:-6"])
  })

  it("finds an overfilled moment, and forgets it when the bound is taken back", () => {
    const { trail, table } = setUp([0, 0], [9, 9])
    for (const key of [1, 3]) {
      trail.raise(key, -1, NO_REASON)
      const overfull = table.enter(key, -1)
      if (key === 1) expect(overfull).toBeNull()
      else expect(overfull?.map((literal) => trail.isTrue(literal))).toEqual([true, true, true, true])
    }
    expect(table.overfull()).toBe(true)
    table.leave(3, -9)
    trail.pop()
    expect(table.overfull()).toBe(false)
  })
})
