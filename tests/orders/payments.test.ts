import { describe, expect, it } from "vitest"
import { money, sumOf } from "../../src/kernels/money.ts"
import { monthsAfter, paymentPlan } from "../../src/orders/payments.ts"
import { datedOf, moneyOf, stepOf } from "../fixtures/programme.ts"
import { surveyed } from "../fixtures/rooms.ts"

const programme = datedOf(
  [stepOf({ key: "a", hours: 8 }), stepOf({ key: "b", hours: 8, trade: "floors", stage: "floor" })],
  [surveyed()],
)
const stages = [
  { what: "start", percent: 33.3, at: "start" },
  { what: "paint", percent: 33.3, done: { trade: "decorating", room: "R1" } },
  { what: "end", percent: 33.4, at: "finish" },
]

describe("payments", () => {
  const file = moneyOf({ payments: { within: 7, stages }, retention: { percent: 5, months: 6 } })
  const plan = paymentPlan(money("1000.01"), file, programme)!

  it("make the price to the penny, by hand: shares of 1,000.01, 5 % of each held back, two halves at the end", () => {
    expect(
      plan.payments.map(({ worth, heldBack, toPay }) =>
        [worth, heldBack, toPay].map((each) => each.toFixed(2)),
      ),
    ).toEqual([
      ["333.00", "16.65", "316.35"],
      ["333.01", "16.65", "316.36"],
      ["334.00", "16.70", "317.30"],
      ["0.00", "0.00", "25.00"],
      ["0.00", "0.00", "25.00"],
    ])
    expect(plan.total.toFixed(2)).toBe("1000.01")
    expect(sumOf(plan.payments.map((each) => each.heldBack)).toFixed(2)).toBe("50.00")
  })

  it("fall due with their milestones: the start, the trade done in its room, the finish, and six months after it", () => {
    expect(plan.payments.map(({ reached, payBy }) => [reached, payBy])).toEqual([
      ["2027-03-01", "2027-03-08"],
      ["2027-03-01", "2027-03-08"],
      ["2027-03-02", "2027-03-09"],
      ["2027-03-02", "2027-03-09"],
      ["2027-09-02", "2027-09-09"],
    ])
  })

  it("are none where none were agreed, and nothing is held back where nothing was said", () => {
    expect(paymentPlan(money(1), moneyOf(), programme)).toBeNull()
    const bare = paymentPlan(money("10"), moneyOf({ payments: { within: 0, stages } }), programme)!
    expect(bare.retention).toBeNull()
    expect(bare.payments).toHaveLength(3)
  })

  it.each([
    [[{ what: "a", percent: 40, at: "start" }], "shares-not-whole"],
    [[{ what: "a", percent: 100 }], "milestone-unclear"],
    [[{ what: "a", percent: 100, at: "start", done: { trade: "floors" } }], "milestone-unclear"],
  ])("are refused where shares or milestones do not hold (%j)", (bad, code) => {
    expect(() => moneyOf({ payments: { within: 7, stages: bad } })).toThrow(code)
  })
})

describe("months later", () => {
  it.each([
    ["2027-08-31", 6, "2028-02-29"],
    ["2027-01-31", 1, "2027-02-28"],
    ["2027-11-15", 3, "2028-02-15"],
    ["2027-04-12", 60, "2032-04-12"],
  ])("than %s by %i is %s", (date, months, later) => {
    expect(monthsAfter(date, months)).toBe(later)
  })
})
