import { describe, expect, it } from "vitest"
import { oilFindings, oilFullDays, oilGate } from "../../../src/trades/floors/oil.ts"
import { floorWork } from "../../../src/trades/floors/work.ts"
import { floorTask } from "./fixture.ts"

function inAir(temperature: number, humidity = 55) {
  const task = floorTask({ input: { oilCoats: 2 } })
  return { ...task, job: { ...task.job, climate: { ...task.job.climate, temperature, humidity } } }
}

describe("oil on a floor", () => {
  it("at 20 °C: 12 h to the next coat, 24 h to socks, 14 days to rugs and water (common practice)", () => {
    expect(oilGate(inAir(20), false)).toMatchObject({ hours: 12, forbids: ["walk", "load", "wet"] })
    expect(oilGate(inAir(20), true)!.hours).toBe(24)
    expect(oilFullDays(inAir(20))).toBe(14)
  })

  it("ten degrees colder twice as long", () => {
    expect(oilGate(inAir(10), false)!.hours).toBe(24)
    expect(oilFullDays(inAir(10))).toBe(28)
  })

  it("in air too cold: no gate, no days, an error", () => {
    expect(oilGate(inAir(3), true)).toBeUndefined()
    expect(oilFullDays(inAir(3))).toBeNull()
    expect(oilFindings(inAir(3)).map((each) => [each.code, each.severity])).toEqual([
      ["air-outside-range", "error"],
    ])
    expect(oilFindings(inAir(20))).toEqual([])
  })

  it("a coat of oil is marked for its fumes", () => {
    const oiled = floorWork(inAir(20)).steps.filter((step) => step.stage === "oil" && step.gate)
    expect(oiled.map((step) => step.fumes)).toEqual([true, true])
  })
})
