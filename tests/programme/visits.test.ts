import { expect, it } from "vitest"
import { datedOf, programmeOf, stepOf } from "../fixtures/programme.ts"
import { surveyed } from "../fixtures/rooms.ts"

it("a day on which only plaster dries is no visit", () => {
  const gate = { process: "plaster", hours: 100, forbids: ["coat" as const] }
  const { visits } = datedOf(
    [
      stepOf({ key: "dry", stage: "dry-out", hours: 0, gate }),
      stepOf({ key: "mist", stage: "mist", hours: 2 }),
    ],
    [surveyed()],
    programmeOf(),
  )
  // 100 h from Monday 08:00 end on Friday at 12:00.
  expect(visits).toEqual([{ crew: "decorator", from: "2027-03-05", to: "2027-03-05", keys: ["mist"] }])
})
