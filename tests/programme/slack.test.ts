import { describe, expect, it } from "vitest"
import { datedOf, programmeOf, stepOf } from "../fixtures/programme.ts"
import { surveyed } from "../fixtures/rooms.ts"

const rooms = [surveyed(), surveyed({ id: "R2" })]

describe("spare time", () => {
  it("is none on the longest chain and what is left beside it, by hand", () => {
    const { steps } = datedOf(
      [
        stepOf({ key: "first", stage: "mist", hours: 8 }),
        stepOf({ key: "last", stage: "last-coat", hours: 8, trade: "decorating" }),
        stepOf({ key: "beside", trade: "floors", room: "R2", stage: "floor", hours: 5 }),
      ],
      rooms,
      programmeOf(),
    )
    const float = (key: string) => steps.find(({ step }) => step.key === key)!.float
    expect([float("first"), float("last"), float("beside")]).toEqual([0, 0, 11])
  })

  it("can be used up without moving anything else", () => {
    const list = [
      stepOf({ key: "a", stage: "mist", hours: 3 }),
      stepOf({ key: "b", stage: "white", hours: 6 }),
      stepOf({ key: "c", room: "R2", trade: "floors", stage: "floor", hours: 2 }),
      stepOf({ key: "d", room: "R2", stage: "fill", hours: 4, after: ["b"] }),
    ]
    const before = datedOf(list, rooms)
    const spare = before.steps.find(({ step }) => step.key === "c")!.float
    expect(spare).toBe(7)
    const longer = list.map((step) => (step.key === "c" ? { ...step, hours: step.hours + spare } : step))
    expect(datedOf(longer, rooms).finish).toBe(before.finish)
    const tooLong = list.map((step) => (step.key === "c" ? { ...step, hours: step.hours + spare + 8 } : step))
    expect(datedOf(tooLong, rooms).finish > before.finish).toBe(true)
  })
})
