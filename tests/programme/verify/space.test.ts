import { expect, it } from "vitest"
import { spaceBroken } from "../../../src/programme/verify/space.ts"
import { stepOf } from "../../fixtures/programme.ts"
import { brokenAt, movedBy } from "./broken.ts"

it("a second crew in the room and dust on its wet coat are found", () => {
  const gate = { process: "paint", hours: 2, forbids: ["coat" as const] }
  const steps = [
    stepOf({ key: "coat", stage: "white", hours: 2, gate }),
    stepOf({ key: "saw", trade: "floors", stage: "floor", hours: 1, dusty: true }),
  ]
  expect(spaceBroken(brokenAt(steps, "saw", movedBy(0)))).toEqual([])
  expect(spaceBroken(brokenAt(steps, "saw", movedBy(-4)))).toEqual([
    "saw: coat is in the room",
    "saw: dust on coat",
  ])
})
