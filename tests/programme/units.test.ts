import { describe, expect, it } from "vitest"
import { apart } from "../../src/programme/units.ts"
import { programmeOf, siteOf, stepOf } from "../fixtures/programme.ts"
import { surveyed } from "../fixtures/rooms.ts"
import { placeable } from "./parts.ts"

const wet = { process: "paint", hours: 5, forbids: ["coat" as const] }

describe("units", () => {
  it("stand in the order of stages, then rooms, and know what they wait for by number", () => {
    const { plan } = placeable([
      stepOf({ key: "last", stage: "last-coat" }),
      stepOf({ key: "far", room: "R2", stage: "mist" }),
      stepOf({ key: "near", stage: "mist" }),
    ])
    expect(plan.units.map((unit) => unit.steps[0]!.key)).toEqual(["near", "far", "last"])
    expect(plan.units[2]!.waits).toEqual([{ unit: 0, until: "ready" }])
    expect(plan.follows[2]).toBe(1)
  })

  it("are kept apart by crew, room and dust, but not where a licensed trade looks in clean and dry", () => {
    const crews = [
      { id: "a", name: "A", people: 1, trades: ["decorating"] },
      { id: "b", name: "B", people: 1, trades: ["floors"] },
      { id: "c", name: "C", people: 1, trades: ["electrics"], licensed: true },
    ]
    const { plan } = placeable(
      [
        stepOf({ key: "coat", gate: wet }),
        stepOf({ key: "saw", trade: "floors", dusty: true }),
        stepOf({ key: "look", trade: "electrics" }),
        stepOf({ key: "cover", trade: "floors" }),
      ],
      { file: programmeOf({ crews }), site: siteOf([surveyed()]) },
    )
    const between = (a: number, b: number) => plan.apart[a * 4 + b]
    expect(between(0, 1)).toBe(apart.room + apart.dustFrom)
    expect(between(1, 0)).toBe(apart.room + apart.dustOn)
    expect(between(1, 3)).toBe(apart.crew)
    expect(between(2, 3)).toBe(0)
    expect(between(1, 2)).toBe(apart.room)
  })
})
