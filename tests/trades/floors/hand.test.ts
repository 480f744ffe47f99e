import { describe, expect, it } from "vitest"
import { handAfter, leftBy } from "../../../src/trades/floors/hand.ts"
import type { Offcut } from "../../../src/trades/floors/layout/boards.ts"
import { planFloor } from "../../../src/trades/floors/plan-floor.ts"
import { floorTask } from "./fixture.ts"

const layout = planFloor(floorTask({})).plan!.layout
const left = (mark: string, length: number): Offcut => ({
  board: 1,
  room: "A1",
  of: 1860,
  from: 0,
  to: length,
  low: 0,
  high: 189,
  mark,
})

describe("offcuts in hand after a room", () => {
  it("what its rows left, with room and mark; the longest six", () => {
    const own = layout.offcuts.map((offcut) => `R1 ${offcut.mark}`)
    const hand = handAfter([], "R1", layout)
    expect(hand.length).toBeGreaterThan(0)
    expect(hand.length).toBeLessThanOrEqual(6)
    for (const offcut of hand) {
      expect(own).toContain(offcut.mark)
      expect(offcut.room).toBe("R1")
      expect(leftBy(offcut)).toBe("R1")
    }
  })

  it("what it cut into is gone, what it was not brought stays", () => {
    const before = [left("A1 3L", 1500), left("A1 5L", 1400)]
    const bare = { ...layout, offcuts: [], brought: [before[0]!] }
    expect(handAfter(before, "R1", bare)).toEqual([before[1]])
  })

  it("what is left of a lent board keeps the room that opened it, and takes the mark of the room that cut it", () => {
    const rest = { ...left("4M", 400), from: 100 }
    expect(handAfter([], "R1", { ...layout, offcuts: [rest] })).toMatchObject([{ room: "A1", mark: "R1 4M" }])
  })
})
