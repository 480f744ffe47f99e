import { describe, expect, it } from "vitest"
import { cutsOff, daysText, plainWork, wetDates, workedDates } from "../../src/sheets/plain-work.ts"
import { trades } from "../../src/trades/index.ts"
import { stages } from "../../src/trades/stages.ts"
import { datedOf, programmeOf, stepOf } from "../fixtures/programme.ts"
import { surveyed } from "../fixtures/rooms.ts"

const programme = datedOf([stepOf({ key: "a" })], [surveyed()], programmeOf())
const [dated] = programme.steps

describe("plain words", () => {
  it("are there for every stage, and other ones where a trade does something else then", () => {
    const of = (trade: string, stage: (typeof stages)[number]) =>
      plainWork({ ...dated!, step: { ...dated!.step, trade, stage } })
    for (const stage of stages) expect(of("any", stage)).toMatch(/^[A-Z].{10,}/)
    expect(of("electrics", "second-fix")).not.toBe(of("joinery", "second-fix"))
  })

  it("name trades that there are", () => {
    for (const trade of Object.keys(cutsOff)) expect(trades.map(({ id }) => id)).toContain(trade)
  })
})

describe("days for the reader", () => {
  it("run on over a weekend and a holiday, by hand: Thursday before Easter to Tuesday after it", () => {
    const days = ["2027-03-30", "2027-03-25", "2027-04-01", "2027-03-25"]
    expect(daysText(days, programme).replaceAll("\u00a0", " ")).toBe("Thu 25 Mar to Tue 30 Mar, Thu 1 Apr")
    expect(daysText([], programme)).toBe("")
  })

  it("are those worked on, and those on which nobody may walk", () => {
    expect(workedDates(dated!, programme)).toEqual(["2027-03-01"])
    expect(wetDates(dated!, programme)).toEqual([])
    const wet = {
      ...dated!,
      step: { ...dated!.step, gate: { process: "oil", hours: 1, forbids: ["walk" as const] } },
    }
    expect(wetDates(wet, programme)).toEqual(["2027-03-01"])
  })
})
