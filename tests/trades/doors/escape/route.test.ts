import { describe, expect, it } from "vitest"
import { escapeRoute } from "../../../../src/trades/doors/escape/route.ts"
import { storeyHeights } from "../../../../src/trades/doors/escape/storeys.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { doorRules, jobOf, type ShortHouse } from "../houses.ts"

const base: ShortHouse = {
  decks: [0, 2600, 5200],
  rooms: ["P hall 0", "H hall 0", "L living 0", "M landing 1", "T landing 2", "A bedroom 2"],
  stairs: ["S1 H M", "S2 M T new"],
  doors: ["X outside P final", "DP P H", "DL H L", "DA T A"],
}

function route(change: Partial<ShortHouse> = {}) {
  const job = jobOf({ ...base, ...change })
  return escapeRoute(job.house, storeyHeights(job, rulesRead(doorRules)))
}

describe("the escape route", () => {
  it("takes in the lobby between hall and final exit", () => {
    const found = route()
    expect([...found.stairway].sort()).toEqual(["H", "M", "P", "T"])
    expect(found.route?.map((way) => way.to)).toEqual(["M", "H", "P", "outside"])
  })

  it("leaves out a lobby that is not on the way", () => {
    const found = route({ doors: ["X outside H final", "DP P H", "DL H L", "DA T A"] })
    expect(found.stairway.has("P")).toBe(false)
  })

  it("prefers halls to a shorter way through a room", () => {
    const found = route({ doors: ["X outside P final", "Y outside L final", "DP P H", "DL H L", "DA T A"] })
    expect(found.route?.map((way) => way.to)).toEqual(["M", "H", "P", "outside"])
    expect(found.findings).toEqual([])
  })

  it("names a stair that rises out of a living room", () => {
    const found = route({ stairs: ["S1 L M", "S2 M T new"] })
    expect(found.findings.map((each) => each.code)).toEqual(["escape-open-plan"])
  })

  it("says so where no exit is marked", () => {
    const found = route({ doors: ["X outside P", "DP P H", "DL H L", "DA T A"] })
    expect(found.route).toBeNull()
    expect(found.findings.map((each) => each.code)).toEqual(["escape-no-final-exit"])
  })
})
