import { describe, expect, it } from "vitest"
import { bookedDelivery, household } from "../../../src/intake/schema/household.ts"

describe("the people in the house, as written", () => {
  it("all may be left out", () => {
    expect(household.parse({})).toEqual({ sleeps: [], screens: [] })
  })

  it("a screen needs its day up, a delivery its day, and no key is taken that is not known", () => {
    expect(household.safeParse({ screens: [{ at: "stair foot" }] }).success).toBe(false)
    expect(bookedDelivery.safeParse({ product: "oak" }).success).toBe(false)
    expect(household.safeParse({ sleepers: [] }).success).toBe(false)
    expect(bookedDelivery.parse({ product: "oak", on: "2027-03-30" }).on).toBe("2027-03-30")
  })
})
