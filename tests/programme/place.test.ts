import { describe, expect, it } from "vitest"
import { clockAt, type Instant } from "../../src/kernels/calendar/instant.ts"
import { placeAll } from "../../src/programme/place.ts"
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

  it("around what is done already", () => {
    const given = placeable([stepOf({ key: "a", hours: 2 }), stepOf({ key: "b", hours: 2, stage: "fill" })])
    const start = given.opening + 24 * 3_600_000
    const pinned = new Map([[0, { start, finish: start + 3_600_000 }]])
    const placing = placeAll({ ...given, pinned }, plainChoice(given))!
    expect([...placing.start].map(time)).toEqual(["2027-03-02 08:00", "2027-03-02 09:00"])
  })

  it("what dries by itself has dried on while days were reported", () => {
    const given = placeable([
      stepOf({ key: "plaster", stage: "dry-out", hours: 0, gate: { ...wet, hours: 48 } }),
      stepOf({ key: "far", hours: 2, room: "R2" }),
    ])
    const far = given.plan.units.findIndex((unit) => unit.work)
    const opening = given.opening + 72 * 3_600_000
    const pinned = new Map([[far, { start: given.opening, finish: given.opening + 3_600_000 }]])
    const { start } = placeAll({ ...given, opening, pinned }, plainChoice(given))!
    expect(time(start[1 - far]!)).toBe("2027-03-01 08:00")
  })

  it("behind the reported unit that kept its crew to the last reported day", () => {
    const given = placeable([stepOf({ key: "a", hours: 2 }), stepOf({ key: "b", hours: 2, room: "R2" })])
    const start = given.opening + 24 * 3_600_000
    const evening = start + 9 * 3_600_000
    const pinned = new Map([[0, { start, finish: evening }]])
    const { cause } = placeAll({ ...given, opening: evening, pinned }, plainChoice(given))!
    expect(cause[1]).toEqual({ kind: "crew", unit: 0 })
  })
})
