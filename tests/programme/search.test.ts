import { describe, expect, it } from "vitest"
import { chainsOf } from "../../src/programme/bound.ts"
import { bestPlacing } from "../../src/programme/search.ts"
import { programmeOf, stepOf } from "../fixtures/programme.ts"
import { placeable } from "./parts.ts"

const crews = (visits?: number) => [
  { id: "joiner", name: "Joiner", people: 1, trades: ["floors"] },
  { id: "decorator", name: "Decorator", people: 1, trades: ["decorating"], ...(visits ? { visits } : {}) },
]
const steps = [
  stepOf({ key: "long", trade: "floors", stage: "floor", hours: 24 }),
  stepOf({ key: "here", stage: "last-coat", hours: 2 }),
  stepOf({ key: "there", room: "R2", stage: "last-coat", hours: 2 }),
]

describe("the best placing", () => {
  it("keeps to the limit of visits, though the other room could be done at once", () => {
    const given = placeable(steps, { file: programmeOf({ crews: crews(1) }) })
    const { score, placing } = bestPlacing(given, chainsOf(given))
    expect(score[0]).toBe(0)
    const decorator = given.plan.units.flatMap((unit, index) => (unit.crew === 1 ? [index] : []))
    const days = decorator.map((unit) => given.tables[0]!.dayNumber(placing.start[unit]!))
    expect(Math.max(...days) - Math.min(...days)).toBeLessThanOrEqual(1)
  })

  it("finds the shorter order of two: the long chain goes first", () => {
    const chain = [
      stepOf({ key: "short", hours: 8, room: "R2" }),
      stepOf({ key: "first", hours: 4 }),
      stepOf({ key: "then", trade: "floors", stage: "floor", hours: 16 }),
    ]
    const given = placeable(chain)
    const { placing } = bestPlacing(given, chainsOf(given), 0)
    // Common sense by hand: 4 h painting and 16 h flooring, 20 h in all; the other painting fits beside the floor.
    expect(given.tables[0]!.between(given.opening, Math.max(...placing.finish))).toBe(20)
  })
})
