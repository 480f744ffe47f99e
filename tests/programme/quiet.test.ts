import { describe, expect, it } from "vitest"
import { airedBy, weekOf } from "../../src/programme/quiet.ts"
import { programmeOf } from "../fixtures/programme.ts"

const asleep = { days: ["mon", "tue", "wed"], from: "09:00", to: "14:00", why: "sleeps by day" }

const loud = { noisy: true, airing: 0 }
const calm = { noisy: false, airing: 0 }

describe("working spans", () => {
  it("are those of the working days, and of no other", () => {
    const week = weekOf(programmeOf(), loud)
    expect(Object.keys(week)).toEqual(["monday", "tuesday", "wednesday", "thursday", "friday"])
    expect(week.monday).toEqual(["08:00-12:00", "13:00-17:00"])
  })

  it("leave quiet hours out for noisy work on their days alone", () => {
    const week = weekOf(programmeOf({ quiet: [asleep] }), loud)
    expect(week.wednesday).toEqual(["08:00-09:00", "14:00-17:00"])
    expect(week.thursday).toEqual(["08:00-12:00", "13:00-17:00"])
  })

  it("are whole for work that makes no noise", () => {
    expect(weekOf(programmeOf({ quiet: [asleep] }), calm).monday).toEqual(["08:00-12:00", "13:00-17:00"])
  })

  it.each([
    ["before the day", "06:00", "08:00", ["08:00-12:00", "13:00-17:00"]],
    ["over the start", "07:00", "08:30", ["08:30-12:00", "13:00-17:00"]],
    ["inside a span", "10:00", "11:00", ["08:00-10:00", "11:00-12:00", "13:00-17:00"]],
    ["over a whole span", "08:00", "12:00", ["13:00-17:00"]],
    ["over all of it", "00:00", "23:59", []],
  ])("quiet %s", (_, from, to, left) => {
    expect(weekOf(programmeOf({ quiet: [{ ...asleep, from, to }] }), loud).monday).toEqual(left)
  })

  it("take several quiet times from one day", () => {
    const nap = { days: ["mon"], from: "15:00", to: "15:30", why: "small child" }
    expect(weekOf(programmeOf({ quiet: [asleep, nap] }), loud).monday).toEqual([
      "08:00-09:00",
      "14:00-15:00",
      "15:30-17:00",
    ])
  })
})

describe("solvent where people sleep", () => {
  const monday = (bedtime: string, airing = 8) =>
    weekOf(programmeOf({ bedtime }), { noisy: false, airing }).monday

  it.each([
    ["22:00", ["08:00-12:00", "13:00-14:00"]],
    ["20:00", ["08:00-12:00"]],
    ["18:30", ["08:00-10:30"]],
    ["00:30", ["08:00-12:00", "13:00-16:30"]],
    ["01:30", ["08:00-12:00", "13:00-17:00"]],
  ])("for bedtime at %s", (bedtime, left) => {
    expect(monday(bedtime)).toEqual(left)
  })

  it("has the whole day where nothing is asked", () => {
    expect(monday("22:00", 0)).toEqual(["08:00-12:00", "13:00-17:00"])
  })

  it("is done by a time that is said", () => {
    expect(airedBy("22:00", 8)).toBe("14:00")
    expect(airedBy("00:30", 8)).toBe("16:30")
  })
})
