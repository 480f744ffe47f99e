import { describe, expect, it } from "vitest"
import { woodMoisture } from "../../../src/kernels/air.ts"
import { regionOf } from "../../../src/kernels/polygon/region.ts"
import type { RuleEntry } from "../../../src/rulebook/entry.ts"
import { gapByRule, type MovementTask, movement } from "../../../src/trades/floors/movement.ts"
import { floorRules } from "../../../src/trades/floors/rules.ts"
import { AT_REST, GAPS, SOLID_GROWTH } from "../../facts/floors.ts"
import { rulesOf } from "../../fixtures/rooms.ts"
import { floorTask } from "./fixture.ts"

function rulesWith(changes: Record<string, number>) {
  return rulesOf(floorRules.map((rule): RuleEntry => ({ ...rule, value: changes[rule.id] ?? rule.value })))
}

function moved(changes: Partial<MovementTask>, given: Parameters<typeof floorTask>[0] = {}) {
  const task = floorTask(given)
  const wall = task.room.walls[0]!
  return movement(
    task.room,
    {
      wall,
      fields: [regionOf(task.room.outline)],
      moves: undefined,
      held: false,
      written: undefined,
      ...changes,
    },
    task.job,
  )
}

describe("gap by rule", () => {
  it.each(GAPS)("$what: $value ($source)", ({ span, perMetre, value }) => {
    expect(gapByRule(span, rulesWith({ "floor-gap-per-metre": perMetre }))).toBe(value)
  })
})

describe("moisture that limits and movement start from", () => {
  it.each(AT_REST)(
    "$temperature °C and $humidity %: $value % ($source)",
    ({ temperature, humidity, value }) => {
      expect(Math.abs(woodMoisture(temperature, humidity) - value)).toBeLessThanOrEqual(0.0051)
    },
  )
})

describe("movement across the boards", () => {
  const room = { readings: [{ on: "2027-02-01", what: "board", value: 8, instrument: "pin meter" }] }

  /* Service set so that wood rests between 8 % as read and what 20 °C and 60 % give (11.00 %): 3,000 × 0.00365 × 3.00 = 32.9 solid. */
  it("solid boards, by the handbook's coefficient", () => {
    const solid = moved({ moves: 1 }, { room })
    expect(solid.across).toBeCloseTo(3000, 6)
    expect(solid.growth).toBeCloseTo(3000 * 0.00365 * (woodMoisture(20, 60) - 8), 9)
    expect(SOLID_GROWTH.across * 0.00365 * (SOLID_GROWTH.to - SOLID_GROWTH.from)).toBeCloseTo(
      SOLID_GROWTH.value,
      9,
    )
  })

  it("an engineered board moves by its own share, the maker's before the rule's", () => {
    const solid = moved({ moves: 1 }, { room }).growth
    expect(moved({}, { room }).growth).toBeCloseTo(solid * 0.334, 9)
    expect(moved({ moves: 0.1 }, { room }).growth).toBeCloseTo(solid * 0.1, 9)
    expect(moved({ moves: 0.1 }, { room }).shareByMaker).toBe(true)
  })

  it("half each side where free, all one way where held", () => {
    const free = moved({ moves: 1 }, { room })
    const held = moved({ moves: 1, held: true }, { room })
    expect(free.byCalculation).toBe(Math.ceil(free.growth / 2))
    expect(held.byCalculation).toBe(Math.ceil(held.growth))
    expect(free.gap).toBe(Math.max(10, free.byCalculation))
    expect(held.widest - held.gap).toBeCloseTo(2 * (free.widest - free.gap), 9)
  })

  it("the latest reading of the boards counts; without one the air of the work", () => {
    const readings = [
      { on: "2027-02-03", what: "board", value: 9, instrument: "pin meter" },
      { on: "2027-02-01", what: "board", value: 8, instrument: "pin meter" },
    ]
    expect(moved({}, { room: { readings } })).toMatchObject({ laidAt: 9, wasRead: true })
    expect(moved({})).toMatchObject({ laidAt: woodMoisture(18, 55), wasRead: false })
  })

  it("a written gap stands, whatever is asked", () => {
    expect(moved({ written: 13 }).gap).toBe(13)
  })
})
