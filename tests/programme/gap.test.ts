import { expect, it } from "vitest"
import { gapDays } from "../../src/programme/gap.ts"
import { datedOf, stepOf } from "../fixtures/programme.ts"
import { surveyed } from "../fixtures/rooms.ts"

it("is counted in working days, over the weekend, and is none where the finish is proven", () => {
  const programme = datedOf([stepOf({ key: "a", hours: 4 })], [surveyed()])
  expect(programme.bound.proven).toBe(true)
  expect(gapDays(programme)).toBe(0)
  // From Thursday 4 March to Tuesday 9 March 2027: Friday, Monday and Tuesday.
  const bound = { finish: "2027-03-04", proven: false, by: "" }
  expect(gapDays({ ...programme, finish: "2027-03-09", bound })).toBe(3)
})
