import { describe, expect, it } from "vitest"
import { BoundTrail, NO_REASON } from "../../../../src/kernels/schedule/exact/bound-trail.ts"
import { ClauseStore } from "../../../../src/kernels/schedule/exact/clauses.ts"

/** Three activities that start from 0 to 9; a clause that one of them starts at 5 or later. */
function setUp() {
  const trail = new BoundTrail(new Int32Array(3), new Int32Array(3).fill(9))
  const store = new ClauseStore(trail)
  const late = [0, 2, 4].map((key) => trail.literal(key, 5))
  store.add(Int32Array.from(late))
  const forced: number[] = []
  const makeSooner = (activity: number) => {
    trail.raise(2 * activity + 1, -4, NO_REASON)
    return store.whenFalse(late[activity]!, (literal) => forced.push(literal))
  }
  return { trail, store, late, forced, makeSooner }
}

describe("learned clauses", () => {
  it.each([
    [0, 1, 2],
    [2, 0, 1],
    [1, 2, 0],
  ])("with %i and %i ruled out the third must hold", (first, second, third) => {
    const { late, forced, makeSooner } = setUp()
    expect(makeSooner(first)).toBeNull()
    expect(forced).toEqual([])
    expect(makeSooner(second)).toBeNull()
    expect(forced).toEqual([late[third]])
  })

  it("with all ruled out the clause itself is the conflict", () => {
    const { trail, late, store } = setUp()
    for (const key of [1, 3, 5]) trail.raise(key, -4, NO_REASON)
    const conflicts = late
      .map((literal) => store.whenFalse(literal, () => {}))
      .filter((each) => each !== null)
    expect(conflicts[0]?.literals).toHaveLength(3)
  })

  it("a clause that holds asks for nothing", () => {
    const { trail, forced, makeSooner } = setUp()
    trail.raise(2, 7, NO_REASON)
    makeSooner(0)
    makeSooner(2)
    expect(forced).toEqual([])
  })

  it("drops the less useful half, never the pairs", () => {
    const { trail, store } = setUp()
    for (let w = 1; w < 9; w++) store.add(Int32Array.from([0, 2, 4].map((key) => trail.literal(key, w))))
    store.add(Int32Array.of(trail.literal(0, 3), trail.literal(2, 3)))
    store.bump(4)
    store.reduce()
    expect(store.clauses.length).toBeLessThanOrEqual(6)
    expect(store.clauses.some(({ literals }) => literals.length === 2)).toBe(true)
    expect(store.clauses[0]?.activity).toBe(2)
  })
})
