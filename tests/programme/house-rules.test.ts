import { describe, expect, it } from "vitest"
import { waitsFor as waitsIn } from "../../src/programme/house-rules.ts"
import type { Site } from "../../src/programme/programme.ts"
import { waysOf } from "../../src/programme/ways.ts"
import type { Step } from "../../src/trades/trade.ts"
import { siteOf, stepOf } from "../fixtures/programme.ts"
import { surveyed } from "../fixtures/rooms.ts"

const rooms = [surveyed(), surveyed({ id: "R2" }), surveyed({ id: "L1", use: "landing" })]

/** Keys waited for, by key, on a site that nothing joins. */
function waitsFor(steps: readonly Step[], site: Site = siteOf(rooms)): Map<string, string[]> {
  const waits = waitsIn({ steps, site, ways: waysOf(site), blocks: new Map() })
  return new Map([...waits].map(([key, own]) => [key, own.map((wait) => wait.key)]))
}

describe("what a step waits for", () => {
  it("every step of the nearest earlier stage of its room, not of other rooms", () => {
    const steps = [
      stepOf({ key: "white a", stage: "white" }),
      stepOf({ key: "white b", stage: "white" }),
      stepOf({ key: "mist", stage: "mist" }),
      stepOf({ key: "other", stage: "white", room: "R2" }),
      stepOf({ key: "last", stage: "last-coat" }),
    ]
    const waits = waitsFor(steps)
    expect(waits.get("last")).toEqual(["white a", "white b"])
    expect(waits.get("white a")).toEqual(["mist"])
    expect(waits.get("mist")).toEqual([])
    expect(waits.get("other")).toEqual([])
  })

  it("its own list too, without keys that no step has and without itself", () => {
    const steps = [stepOf({ key: "a" }), stepOf({ key: "b", after: ["a", "nobody", "b"] })]
    expect(waitsFor(steps).get("b")).toEqual(["a"])
  })

  it("the landing's oil comes after that of the rooms it leads to (common practice: oil towards the stair)", () => {
    const steps = [
      stepOf({ key: "landing", stage: "oil", room: "L1" }),
      stepOf({ key: "room 1", stage: "oil" }),
      stepOf({ key: "room 2", stage: "oil", room: "R2" }),
      stepOf({ key: "nosing", stage: "nosings", room: "L1" }),
    ]
    const waits = waitsFor(steps)
    expect(waits.get("landing")).toEqual(["room 1", "room 2"])
    expect(waits.get("nosing")?.sort()).toEqual(["landing", "room 1", "room 2"])
    expect(waits.get("room 1")).toEqual([])
  })
})
