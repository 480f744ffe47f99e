import { expect, it } from "vitest"
import { timeBroken } from "../../../src/programme/verify/time.ts"
import { stepOf } from "../../fixtures/programme.ts"
import { brokenAt, movedBy } from "./broken.ts"

it("work over the break, at night and on a Sunday is found; work moved by whole days is not", () => {
  const steps = [stepOf({ key: "a", hours: 2 })]
  const broken = (hours: number) => timeBroken(brokenAt(steps, "a", movedBy(hours)))
  // Monday 1 March 2027, 08:00 to 10:00 and 12:00 to 13:00 off.
  expect(broken(0)).toEqual([])
  expect(broken(24)).toEqual([])
  expect(broken(3)).not.toEqual([])
  expect(broken(12)).not.toEqual([])
  expect(broken(-24)).not.toEqual([])
})
