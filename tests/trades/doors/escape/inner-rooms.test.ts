import { describe, expect, it } from "vitest"
import { innerRoomFindings } from "../../../../src/trades/doors/escape/inner-rooms.ts"
import { storeyHeights } from "../../../../src/trades/doors/escape/storeys.ts"
import { rulesRead } from "../../../../src/trades/doors/rules-read.ts"
import { doorRules, jobOf } from "../houses.ts"

/** A two-storey house whose upper bedroom has one window. */
function findings(opening: { width: number; height: number; sill: number } | null) {
  const job = jobOf({
    decks: [0, 2600],
    rooms: ["H hall 0", "M landing 1", "B bedroom 1"],
    stairs: ["S H M"],
    doors: ["X outside H final", "D M B"],
    windows: opening ? { B: [{ id: "W1", kind: "window", wall: 3, fromLeft: 500, ...opening }] } : {},
  })
  const rules = rulesRead(doorRules)
  return innerRoomFindings({ ...job, heights: storeyHeights(job, rules), rules }).map((each) => each.code)
}

// Approved Document B vol 1, 2.10, as quoted in a builder's summary: 0.33 m2, 450 either way, sill at most 1,100.
describe("a window to escape by", () => {
  it("just passes at 450 x 740 (0.333 m2) with its sill at 1,100", () => {
    expect(findings({ width: 450, height: 740, sill: 1100 })).toEqual([])
  })

  it.each([
    { what: "area 0.324", width: 450, height: 720, sill: 800 },
    { what: "440 wide", width: 440, height: 900, sill: 800 },
    { what: "sill at 1,101", width: 600, height: 900, sill: 1101 },
  ])("is too small or too high: $what", ({ width, height, sill }) => {
    expect(findings({ width, height, sill })).toEqual(["escape-window-too-small"])
  })

  it("is missed where there is none", () => {
    expect(findings(null)).toEqual(["escape-window-too-small"])
  })
})

describe("an inner room", () => {
  const inner = (use: string) => {
    const job = jobOf({
      decks: [0, 2600, 5200],
      rooms: ["H hall 0", "M landing 1", "T landing 2", "A bedroom 2", `I ${use} 2`],
      stairs: ["S H M", "S2 M T new"],
      doors: ["X outside H final", "DA T A", "DI A I"],
    })
    const rules = rulesRead(doorRules)
    return innerRoomFindings({ ...job, heights: storeyHeights(job, rules), rules }).map((each) => each.code)
  }

  it("is a study behind a bedroom, not a shower room or a store", () => {
    expect(inner("study")).toEqual(["escape-inner-room"])
    expect(inner("bathroom")).toEqual([])
    expect(inner("store")).toEqual([])
  })
})
