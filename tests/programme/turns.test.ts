import { describe, expect, it } from "vitest"
import { clockAt, type Instant } from "../../src/kernels/calendar/instant.ts"
import { chainsOf, inOrder, leastFinish } from "../../src/programme/bound.ts"
import { turnFinish, withTurns } from "../../src/programme/turns.ts"
import type { Step } from "../../src/trades/trade.ts"
import { programmeOf, stepOf } from "../fixtures/programme.ts"
import { placeable } from "./parts.ts"

const time = (moment: number) => Object.values(clockAt(moment as Instant, "Europe/London")).join(" ")
const crews = (licensed: boolean) => [
  { id: "joiner", name: "Joiner", people: 2, trades: ["floors"] },
  { id: "decorator", name: "Decorator", people: 1, trades: ["decorating"] },
  { id: "electrician", name: "Electrician", people: 1, trades: ["electrics"], licensed },
]
const file = (licensed = false) => programmeOf({ crews: crews(licensed) })
/** Three crews in one room at one stage, then a coat that waits for all of them. */
const steps: Step[] = [
  stepOf({ key: "lay", trade: "floors", stage: "floor", hours: 6, dusty: true }),
  stepOf({ key: "fit", trade: "electrics", stage: "floor", hours: 2 }),
  stepOf({ key: "fill", stage: "floor", hours: 3 }),
  stepOf({ key: "coat", stage: "last-coat", hours: 1 }),
]

describe("turns", () => {
  it("of crews in one room: 6 h of two people, 2 h and 3 h end at 17:00, the coat an hour into the next day", () => {
    const given = placeable(steps, { file: file() })
    const chains = chainsOf(given)
    const { finish } = withTurns(given, chains, inOrder(given.plan.units))
    expect(time(Math.max(...chains.finish))).toBe("2027-03-01 12:00")
    expect(time(Math.max(...finish))).toBe("2027-03-02 09:00")
    const { by } = leastFinish(given, chains)
    expect(by).toEqual({ kind: "turns", unit: given.plan.units.length - 1 })
  })

  it("are not asked of a licensed trade's clean work beside other clean work", () => {
    const given = placeable(steps, { file: file(true) })
    // The electrician may work beside the filling, not beside the saw: 3 h and 3 h, then the coat at 15:00.
    const { finish } = withTurns(given, chainsOf(given), inOrder(given.plan.units))
    expect(time(Math.max(...finish))).toBe("2027-03-01 16:00")
  })

  it("begin with the earliest of what is left: 2 h from 08:00, or 1 h from 16:00 over the night", () => {
    const given = placeable([stepOf({ key: "a", hours: 2 }), stepOf({ key: "b", hours: 2, room: "R2" })])
    const opening = given.opening
    const hour = 3_600_000
    expect(time(turnFinish(given, [0, 1], [opening, opening]))).toBe("2027-03-01 12:00")
    expect(time(turnFinish(given, [0, 1], [opening, opening + 8 * hour]))).toBe("2027-03-02 09:00")
  })
})
