import { expect, it } from "vitest"
import { orderBroken } from "../../../src/programme/verify/order.ts"
import { stepOf } from "../../fixtures/programme.ts"
import { brokenAt, movedBy } from "./broken.ts"

it("a step before one of its own list, or before an earlier stage of its room, is found", () => {
  const steps = [
    stepOf({ key: "a", stage: "mist", hours: 2 }),
    stepOf({ key: "b", stage: "white", hours: 2 }),
    stepOf({ key: "c", stage: "white", hours: 2, after: ["b"] }),
  ]
  expect(orderBroken(brokenAt(steps, "c", movedBy(0)))).toEqual([])
  expect(orderBroken(brokenAt(steps, "b", movedBy(-1))).join()).toContain("stages of the room")
  expect(orderBroken(brokenAt(steps, "c", movedBy(-2))).join()).toContain("its own list")
})
