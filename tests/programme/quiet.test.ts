import { describe, expect, it } from "vitest"
import { weekOf } from "../../src/programme/quiet.ts"
import { programmeOf } from "../fixtures/programme.ts"

const asleep = { days: ["mon", "tue", "wed"], from: "09:00", to: "14:00", why: "sleeps by day" }

describe("working spans", () => {
  it("are those of the working days, and of no other", () => {
    const week = weekOf(programmeOf(), true)
    expect(Object.keys(week)).toEqual(["monday", "tuesday", "wednesday", "thursday", "friday"])
    expect(week.monday).toEqual(["08:00-12:00", "13:00-17:00"])
  })

  it("leave quiet hours out for noisy work on their days alone", () => {
    const week = weekOf(programmeOf({ quiet: [asleep] }), true)
    expect(week.wednesday).toEqual(["08:00-09:00", "14:00-17:00"])
    expect(week.thursday).toEqual(["08:00-12:00", "13:00-17:00"])
  })

  it("are whole for work that makes no noise", () => {
    expect(weekOf(programmeOf({ quiet: [asleep] }), false).monday).toEqual(["08:00-12:00", "13:00-17:00"])
  })

  it.each([
    ["before the day", "06:00", "08:00", ["08:00-12:00", "13:00-17:00"]],
    ["over the start", "07:00", "08:30", ["08:30-12:00", "13:00-17:00"]],
    ["inside a span", "10:00", "11:00", ["08:00-10:00", "11:00-12:00", "13:00-17:00"]],
    ["over a whole span", "08:00", "12:00", ["13:00-17:00"]],
    ["over all of it", "00:00", "23:59", []],
  ])("quiet %s", (_, from, to, left) => {
    expect(weekOf(programmeOf({ quiet: [{ ...asleep, from, to }] }), true).monday).toEqual(left)
  })

  it("take several quiet times from one day", () => {
    const nap = { days: ["mon"], from: "15:00", to: "15:30", why: "small child" }
    expect(weekOf(programmeOf({ quiet: [asleep, nap] }), true).monday).toEqual([
      "08:00-09:00",
      "14:00-15:00",
      "15:30-17:00",
    ])
  })
})
