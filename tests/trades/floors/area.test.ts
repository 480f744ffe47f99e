import { describe, expect, it } from "vitest"
import { areaOfAll, floorArea } from "../../../src/trades/floors/area.ts"
import { doorBetween, floorTask } from "./fixture.ts"

const areaOf = (given: Parameters<typeof floorTask>[0], into: string[] = []) => {
  const task = floorTask(given)
  return floorArea(task.room, { gap: 10, into }, task.job.rules)
}

describe("what is floored", () => {
  it("a plain room: 12.000 to the walls, 3.98 × 2.98 covered", () => {
    const area = areaOf({})
    expect(areaOfAll(area.whole)).toBeCloseTo(12, 6)
    expect(areaOfAll(area.laid)).toBeCloseTo(3.98 * 2.98, 6)
  })

  it("a hole in the middle loses itself and its gap all round", () => {
    const hole = {
      id: "well",
      name: "well",
      wall: 1,
      fromLeft: 1000,
      off: 800,
      width: 1200,
      depth: 700,
      floored: false,
    }
    const area = areaOf({ room: { holes: [hole] } })
    expect(areaOfAll(area.whole)).toBeCloseTo(12 - 1.2 * 0.7, 6)
    expect(areaOfAll(area.laid)).toBeCloseTo(3.98 * 2.98 - 1.22 * 0.72, 6)
    expect(area.open.map((each) => each.id)).toEqual(["well"])
  })

  it("a cupboard that the floor runs into counts in", () => {
    const hole = {
      id: "press",
      name: "press",
      wall: 1,
      fromLeft: 0,
      off: 0,
      width: 900,
      depth: 600,
      floored: false,
    }
    expect(areaOfAll(areaOf({ room: { holes: [hole] } }).whole)).toBeCloseTo(12 - 0.54, 6)
    expect(areaOfAll(areaOf({ room: { holes: [hole] } }, ["press"]).whole)).toBeCloseTo(12, 6)
  })

  /* Leaf into this room: line 22 behind the face. Opening 768, boards 8 under each lining, gap 10 behind them and before the line:
     pocket (768 + 2 × 18) × 22 to the walls; covered (768 + 16) × (22 - 10 + 10) more, from the room's gap line to 12 behind the face. */
  it("a doorway is floored to the line under its leaf, under both linings", () => {
    const room = { doors: [{ door: "D1", wall: 1, fromLeft: 1500 }] }
    const area = areaOf({ room, doors: [doorBetween()] })
    expect(area.doorways).toEqual([{ door: "D1", name: "door", wall: 1, depth: 22, hasLining: true }])
    expect(areaOfAll(area.whole)).toBeCloseTo(12 + 0.804 * 0.022, 6)
    expect(areaOfAll(area.laid)).toBeCloseTo(3.98 * 2.98 + 0.784 * 0.022, 6)
  })

  it("the line lies on the far side where the leaf swings away, in the middle where there is none", () => {
    const room = { doors: [{ door: "D1", wall: 1, fromLeft: 1500 }] }
    const depth = (door: Record<string, unknown>) =>
      areaOf({ room, doors: [doorBetween(door)] }).doorways[0]!.depth
    expect(depth({ swingsInto: "HALL" })).toBe(78)
    expect(depth({ swingsInto: undefined, hinges: undefined, lining: "none" })).toBe(50)
  })
})
