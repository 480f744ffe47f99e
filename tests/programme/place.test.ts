import { describe, expect, it } from "vitest"
import { clockAt, type Instant } from "../../src/kernels/calendar/instant.ts"
import { placeAll, waitsWith } from "../../src/programme/place.ts"
import { stepOf } from "../fixtures/programme.ts"
import { placeable, plainChoice } from "./parts.ts"

const time = (moment: number) => Object.values(clockAt(moment as Instant, "Europe/London")).join(" ")
const wet = { process: "paint", hours: 5, forbids: ["coat" as const] }

describe("units are placed", () => {
  it("two crews one after the other in one room, beside each other in two", () => {
    const steps = (room: string) => [
      stepOf({ key: "a", hours: 2 }),
      stepOf({ key: "b", trade: "floors", hours: 2, room }),
    ]
    const starts = (room: string) => {
      const given = placeable(steps(room))
      return [...placeAll(given, plainChoice(given))!.start].map(time)
    }
    expect(starts("R1")).toEqual(["2027-03-01 08:00", "2027-03-01 10:00"])
    expect(starts("R2")).toEqual(["2027-03-01 08:00", "2027-03-01 08:00"])
  })

  it("dust only when the coat in the room is dry", () => {
    const given = placeable([
      stepOf({ key: "a", hours: 2, gate: wet }),
      stepOf({ key: "b", trade: "floors", stage: "white", hours: 1, dusty: true }),
    ])
    const { start, cause } = placeAll(given, plainChoice(given))!
    expect(time(start[1]!)).toBe("2027-03-01 15:00")
    expect(cause[1]).toEqual({ kind: "wet-coat", unit: 0 })
  })

  it("all of one visit when the last of it can start", () => {
    const given = placeable([
      stepOf({ key: "lay", trade: "floors", stage: "floor", hours: 6 }),
      stepOf({ key: "here", stage: "fill", hours: 1 }),
      stepOf({ key: "there", stage: "fill", hours: 1, room: "R2" }),
    ])
    const placing = placeAll(given, { ...plainChoice(given), waits: waitsWith(given.plan, [-1, 0, 0]) })!
    expect([...placing.start].map(time)).toEqual(["2027-03-01 08:00", "2027-03-01 15:00", "2027-03-01 16:00"])
  })

  it("around what is done already", () => {
    const given = placeable([stepOf({ key: "a", hours: 2 }), stepOf({ key: "b", hours: 2, stage: "fill" })])
    const start = given.opening + 24 * 3_600_000
    const pinned = new Map([[0, { start, finish: start + 3_600_000 }]])
    const placing = placeAll({ ...given, pinned }, plainChoice(given))!
    expect([...placing.start].map(time)).toEqual(["2027-03-02 08:00", "2027-03-02 09:00"])
  })
})
