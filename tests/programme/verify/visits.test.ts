import { expect, it } from "vitest"
import { visitsBroken } from "../../../src/programme/verify/visits.ts"
import { stepOf } from "../../fixtures/programme.ts"
import { brokenAt, movedBy } from "./broken.ts"

it("a visit more than is told, and a finish that is not the last, are found", () => {
  const steps = [
    stepOf({ key: "a", stage: "mist", hours: 2 }),
    stepOf({ key: "b", stage: "white", hours: 2 }),
  ]
  expect(visitsBroken(brokenAt(steps, "b", movedBy(0)))).toEqual([])
  const lines = visitsBroken(brokenAt(steps, "b", movedBy(72))).join()
  expect(lines).toContain("2 visits, 1 told")
  expect(lines).toContain("finish")
})
