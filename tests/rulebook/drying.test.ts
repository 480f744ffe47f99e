import { describe, expect, it } from "vitest"
import { saturationPressure } from "../../src/kernels/air.ts"
import {
  type DryingProcessId,
  dryingForbidden,
  dryingHours,
  dryingProcesses,
  dryingRests,
} from "../../src/rulebook/drying.ts"
import { dryingRules } from "../../src/rulebook/drying-rules.ts"
import { Rules } from "../../src/rulebook/rules.ts"
import { DO_NOT, DRYING } from "../facts/drying.ts"

const rules = new Rules(dryingRules)
const ids = Object.keys(dryingProcesses) as DryingProcessId[]

describe("drying times against outside figures", () => {
  it.each(DRYING)("$what ($source)", (fact) => {
    const hours = dryingHours(
      fact.process as DryingProcessId,
      {
        temperature: fact.temperature ?? 20,
        humidity: fact.humidity ?? 60,
        ...(fact.thickness ? { thickness: fact.thickness } : {}),
      },
      rules,
    )
    expect(hours).toBeGreaterThanOrEqual(fact.from - 1e-9)
    expect(hours).toBeLessThanOrEqual(fact.to + 1e-9)
  })

  it.each(DO_NOT)("do not: $what ($source)", ({ process, temperature, humidity, thickness }) => {
    const air = { temperature, humidity, ...(thickness ? { thickness } : {}) }
    expect(dryingHours(process as DryingProcessId, air, rules)).toBe("do not")
    expect(dryingForbidden(process as DryingProcessId, air, rules)).toMatch(/than/)
  })

  it("slows within a tenth of what moist air can take up, from 10 to 20 °C and 60 to 80 % (Magnus form, WMO-No. 8)", () => {
    const room = (t: number, rh: number) => saturationPressure(t) * (1 - rh / 100)
    for (let t = 10; t <= 20; t += 0.5) {
      for (let rh = 60; rh <= 80; rh += 2) {
        const times = (dryingHours("emulsion", { temperature: t, humidity: rh }, rules) as number) / 4
        const physical = room(20, 60) / room(t, rh)
        expect(times / physical).toBeGreaterThan(0.99)
        expect(times / physical).toBeLessThan(1.1)
      }
    }
  })
})

describe("drying over the whole range", () => {
  const temperatures = Array.from({ length: 48 }, (_, step) => -5 + step)
  const humidities = Array.from({ length: 53 }, (_, step) => step * 2)
  const thicknesses = [undefined, 1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 40, 50, 51, 65, 75, 100, 101, 150]

  it.each(ids)("%s: colder, damper, thicker, stiller never sooner; a figure only inside its range", (id) => {
    const wrong: string[] = []
    let inside = 0
    for (const thickness of thicknesses) {
      const at = (temperature: number, humidity: number, still = false) =>
        dryingHours(id, { temperature, humidity, still, ...(thickness ? { thickness } : {}) }, rules)
      for (const t of temperatures) {
        for (const rh of humidities) {
          const here = at(t, rh)
          if (here === "do not") continue
          inside++
          const others = [at(t - 1, rh), at(t, rh + 2), at(t, rh, true)]
          const sooner = others.some((other) => other !== "do not" && other < here)
          const outside = t < 5 || t > 30 || rh > 85 || !Number.isFinite(here) || here < 0
          if (sooner || outside) wrong.push(`${t} °C ${rh} % ${thickness} mm`)
        }
      }
    }
    expect(wrong).toEqual([])
    expect(inside).toBeGreaterThan(700)
  })

  it.each(ids)("%s: each thicker layer takes at least as long", (id) => {
    let before = 0
    for (let thickness = 0.5; thickness <= 120; thickness += 0.5) {
      const hours = dryingHours(id, { temperature: 16, humidity: 70, thickness }, rules)
      if (hours === "do not") continue
      expect(hours).toBeGreaterThanOrEqual(before)
      before = hours
    }
  })

  it.each(ids)("%s rests on entries that stand", (id) => {
    for (const rest of dryingRests(id)) expect(rules.entry(rest).value).toBeGreaterThan(0)
  })
})
