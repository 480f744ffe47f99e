import { describe, expect, it } from "vitest"
import { nextStep } from "../../../src/press/site/timer.ts"
import { dryingHours } from "../../../src/rulebook/drying.ts"
import { dryingRules } from "../../../src/rulebook/drying-rules.ts"
import { Rules } from "../../../src/rulebook/rules.ts"
import { wholeHours } from "../../../src/trades/decorating/gates.ts"

const rules = new Rules(dryingRules)
const zone = "Europe/London"
const from = (date: string, time: string) => ({ date, time })

describe("the drying timer", () => {
  it("counts elapsed hours over both changes of the clock (Summer Time Act 1972: last Sundays of March and October)", () => {
    const day = { process: "trim-solvent" as const, temperature: 20, humidity: 60, zone }
    expect(nextStep({ ...day, start: from("2027-03-27", "16:00") }, rules)).toMatchObject({
      hours: 24,
      at: from("2027-03-28", "17:00"),
      text: "Sun 28 Mar 17:00",
    })
    expect(nextStep({ ...day, start: from("2027-10-30", "16:00") }, rules)).toMatchObject({
      at: from("2027-10-31", "15:00"),
    })
  })

  it("gives the build's own hours, rounded up as on its sheets", () => {
    for (const [temperature, humidity] of [
      [12, 60],
      [17.5, 72],
      [24, 45],
    ] as const) {
      const hours = dryingHours("emulsion", { temperature, humidity }, rules)
      const answer = nextStep(
        { process: "emulsion", temperature, humidity, zone, start: from("2027-05-03", "08:00") },
        rules,
      )
      expect(answer).toMatchObject({ hours: wholeHours(hours as number) })
    }
  })

  it("says do not, and why, outside its range or where nothing was typed", () => {
    const at = { process: "skim" as const, zone, start: from("2027-05-03", "08:00") }
    expect(nextStep({ ...at, temperature: 2, humidity: 60 }, rules)).toEqual({ doNot: "colder than 5 °C" })
    expect(nextStep({ ...at, temperature: 20, humidity: 60, thickness: 40 }, rules)).toEqual({
      doNot: "thicker than 25 mm",
    })
    expect(nextStep({ ...at, temperature: Number.NaN, humidity: 60 }, rules)).toHaveProperty("doNot")
  })
})
