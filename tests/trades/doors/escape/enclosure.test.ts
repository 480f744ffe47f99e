import { describe, expect, it } from "vitest"
import { enclosureItems } from "../../../../src/trades/doors/escape/enclosure.ts"
import { escapeRoute } from "../../../../src/trades/doors/escape/route.ts"
import { storeyHeights } from "../../../../src/trades/doors/escape/storeys.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { doorRules, jobOf } from "../houses.ts"

const hatch = { id: "T1", kind: "hatch", wall: 3, fromLeft: 500, width: 600, height: 600, sill: 300 }

function items(doors: string[], windows = {}) {
  const job = jobOf({
    decks: [0, 2600, 5200],
    rooms: ["H hall 0", "L living 0", "M landing 1", "B bedroom 1", "T landing 2", "A bedroom 2"],
    stairs: ["S1 H M", "S2 M T new"],
    doors: ["X outside H final", ...doors],
    windows,
  })
  const rules = rulesRead(doorRules)
  return enclosureItems(job.house, escapeRoute(job.house, storeyHeights(job, rules)), rules)
}

describe("what else encloses a stair", () => {
  it("has a light over a door only where the door stands in the enclosure", () => {
    const lights = items(["D1 M B light", "D2 A B light"]).filter((item) => /light/i.test(item.what))
    expect(lights.map((item) => item.where)).toEqual(["D1"])
  })

  it("has cupboards, hatches of its own rooms, a soffit a stair, walls of each of its rooms", () => {
    const found = items(["D1 M B", "C1 H cupboard"], { T: [hatch], A: [hatch] })
    expect(found.filter((item) => /Cupboard/.test(item.what)).map((item) => item.where)).toEqual(["C1"])
    expect(found.filter((item) => /Hatch/.test(item.what)).map((item) => item.where)).toEqual(["T"])
    expect(found.filter((item) => /Underside/.test(item.what))).toHaveLength(2)
    expect(found.filter((item) => /Walls/.test(item.what)).map((item) => item.where)).toEqual(["H", "M", "T"])
  })

  // REI 30: Approved Document B vol 1, 2.5 and 2.22, as quoted in a self-build forum and by a fire consultancy.
  it("asks 30 minutes of walls", () => {
    for (const item of items([]).filter(({ what }) => /Walls/.test(what)))
      expect(item.do).toMatch(/^30 minutes/)
  })
})
