import { describe, expect, it } from "vitest"
import { planFloor } from "../../../src/trades/floors/plan-floor.ts"
import { limitText } from "../../../src/trades/floors/readings.ts"
import { BASE_HUMIDITY } from "../../facts/floors.ts"
import { floorTask } from "./fixture.ts"

type Reading = { on: string; what: string; value: number; instrument: string }
const reading = (what: string, value: number, on = "2027-02-01"): Reading => ({
  on,
  what,
  value,
  instrument: "meter",
})
const out = (readings: Reading[], storey = {}) =>
  planFloor(floorTask({ room: { readings }, storey }))
    .findings.filter((finding) => finding.code === "floor-reading-out")
    .map((finding) => finding.at.path.join("."))

describe("readings against their limits", () => {
  it("a timber deck at 12 % passes, at 12.5 % is out (common practice)", () => {
    expect(out([reading("deck", 12)])).toEqual([])
    expect(out([reading("deck", 12.5)])).toEqual(["readings.0.value"])
  })

  it(`a concrete base passes at ${BASE_HUMIDITY.value} %, is out above (${BASE_HUMIDITY.source})`, () => {
    expect(out([reading("deck", BASE_HUMIDITY.value)], { base: "concrete" })).toEqual([])
    expect(out([reading("deck", BASE_HUMIDITY.older)], { base: "concrete" })).toEqual(["readings.0.value"])
  })

  it("the latest reading counts, in whatever order they were written", () => {
    expect(out([reading("deck", 11, "2027-02-09"), reading("deck", 15, "2027-02-01")])).toEqual([])
    expect(out([reading("deck", 11, "2027-02-01"), reading("deck", 15, "2027-02-09")])).toEqual([
      "readings.1.value",
    ])
  })

  it("air too cold, too damp; boards too far from the deck", () => {
    expect(out([reading("air-temperature", 14), reading("air-humidity", 70)])).toHaveLength(2)
    expect(out([reading("deck", 11.5), reading("board", 8)])).toEqual(["readings.0.value"])
    expect(out([reading("deck", 11), reading("board", 8)])).toEqual([])
  })

  it("boards within a point of the moisture that the house will hold", () => {
    const plan = planFloor(floorTask({})).plan!
    const limit = plan.limits.find((each) => each.what === "board")!
    expect([limit.least, limit.most]).toEqual([6.7, 12])
    expect(limitText(limit)).toBe("6.7 to 12 %")
    expect(out([reading("board", 13)])).toEqual(["readings.0.value"])
  })

  it("what has not been read is noted", () => {
    const findings = planFloor(floorTask({ room: { readings: [reading("deck", 10)] } })).findings
    expect(findings.filter((finding) => finding.code === "floor-not-read")).toHaveLength(3)
  })
})
