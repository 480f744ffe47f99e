import { describe, expect, it } from "vitest"
import { emptyFloor, finalOrder, inRow, sameness } from "../../../../src/trades/floors/layout/floor-state.ts"

describe("a floor laid so far", () => {
  it("a row passed over forgets the joints before it", () => {
    const state = { ...emptyFloor([{ length: 1860, perPack: 1 }]), row: 3, joints: [700], last: [1200] }
    expect(inRow(state, 4)).toMatchObject({ row: 4, joints: [], last: [700], secondLast: [1200] })
    expect(inRow(state, 6)).toMatchObject({ row: 6, joints: [], last: [], secondLast: [] })
    expect(inRow(state, 3)).toBe(state)
  })

  it("rules before boards, boards before cuts, cuts before looks", () => {
    const state = emptyFloor([{ length: 1860, perPack: 1 }])
    expect(finalOrder({ ...state, breach: 1 }, { ...state, cost: 9 })).toBeGreaterThan(0)
    expect(finalOrder({ ...state, cost: 3 }, { ...state, cost: 2, cuts: 9 })).toBeGreaterThan(0)
    expect(finalOrder({ ...state, cuts: 2 }, { ...state, cuts: 1, looks: 99 })).toBeGreaterThan(0)
  })

  it("offcuts that kept different ends are not the same hand", () => {
    const hand = (from: number, to: number) => ({
      ...emptyFloor([{ length: 1860, perPack: 1 }]),
      offcuts: [{ board: 1, room: null, of: 1860, from, to, low: 0, high: 189, mark: "" }],
    })
    expect(sameness(hand(0, 900))).not.toBe(sameness(hand(960, 1860)))
    expect(sameness(hand(0, 900))).toBe(sameness({ ...hand(0, 900), boards: 7 }))
  })
})
