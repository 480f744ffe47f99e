import { describe, expect, it } from "vitest"
import { enclosureSteps } from "../../../src/trades/doors/enclosure-steps.ts"
import { escapeOf } from "../../../src/trades/doors/escape/escape.ts"
import { rulesRead } from "../../../src/trades/doors/rules-read.ts"
import { doorRules, jobOf } from "./houses.ts"

const loft = {
  decks: [0, 2600, 5200],
  rooms: ["H hall 0", "L living 0", "M landing 1", "B1 bedroom 1", "T landing 2", "A1 bedroom 2"],
  stairs: ["S1 H M", "S2 M T new"],
  doors: ["X outside H final", "DL H L", "D1 M B1", "DA T A1"],
}

function stepsOf(decks: number[]) {
  const job = jobOf({ ...loft, decks })
  const house = {
    ...job.house,
    doors: job.house.doors.map((door) => ({ ...door, light: door.id === "D1" || door.id === "X" })),
  }
  const rules = rulesRead(doorRules)
  return enclosureSteps(house, escapeOf({ ...job, house }, rules), rules)
}

describe("closing the stair off besides the leaves", () => {
  it("each glazed light over a door onto the stair, then a walk round it after all doors are hung and measured", () => {
    const steps = stepsOf(loft.decks)
    expect(steps.map(({ key }) => key)).toEqual(["doors/D1/light", "doors/house/enclosure"])
    expect(steps[1]!.room).toBe("H")
    expect(steps[1]!.after).toEqual(
      expect.arrayContaining(["doors/DL/gaps", "doors/D1/hang", "doors/DA/gaps", "doors/D1/light"]),
    )
    expect(steps[1]!.hold).toBeTruthy()
  })

  it("nothing in a house low enough that no enclosure is asked", () => {
    expect(stepsOf([0, 2000, 4000])).toEqual([])
  })
})
