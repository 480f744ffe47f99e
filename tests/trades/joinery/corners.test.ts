import { describe, expect, it } from "vitest"
import { externalEnd, internalEnd } from "../../../src/trades/joinery/corners.ts"
import { joineryFacts } from "../../facts/joinery.ts"

describe("skirting ends at corners", () => {
  it.each(joineryFacts.externalMitres)("external corner, $what", ({ turn, thickness, reach }) => {
    const end = externalEnd(180 + turn, thickness)
    expect(end.reach).toBeCloseTo(reach, 2)
    expect(end.cut).toEqual({ as: "external-mitre", setting: turn / 2 })
  })

  it("scribes the second board over the first: it stops a thickness short in a square corner", () => {
    expect(internalEnd(90, 18, { fixed: "second", scribed: 120 }).reach).toBeCloseTo(-18, 9)
    expect(internalEnd(90, 18, { fixed: "first", scribed: 120 })).toEqual({
      cut: { as: "square", setting: 0 },
      reach: 0,
      short: 0,
    })
  })

  it("saws to the longer of back and face where the corner is out of square", () => {
    // 87 degrees: back 18 / sin 87 = 18.025, face 18 / tan 43.5 = 18.968: the board is sawn 18.025 short.
    expect(internalEnd(87, 18, { fixed: "second", scribed: 120 }).reach).toBeCloseTo(-18.025, 3)
    // 93 degrees: back 18 / sin 93 = 18.025, face 18 / tan 46.5 = 17.081: sawn 17.081 short.
    expect(internalEnd(93, 18, { fixed: "second", scribed: 120 }).reach).toBeCloseTo(-17.081, 3)
  })

  it("bevels the first board's end where the corner is out of square by more than half a degree", () => {
    expect(internalEnd(87, 18, { fixed: "first", scribed: 120 }).cut.setting).toBe(3)
    expect(internalEnd(90.4, 18, { fixed: "first", scribed: 120 }).cut.setting).toBe(0)
  })

  it("reaches into a wide corner with the face, into a tight one with the back", () => {
    // 18 tan 30 = 10.392: at 120 degrees the face is the long point, at 60 the back
    const first = { fixed: "first", scribed: 120 } as const
    expect(internalEnd(120, 18, first).reach).toBeCloseTo(10.392, 3)
    expect(internalEnd(60, 18, first).reach).toBe(0)
    expect(internalEnd(60, 18, first).short).toBeCloseTo(10.392, 3)
  })

  it("mitres both boards in a corner too wide to scribe", () => {
    // 135 degrees: half the turn of 45; the face is 18 tan 22.5 = 7.456 shorter than the back
    const end = internalEnd(135, 18, { fixed: "second", scribed: 120 })
    expect(end.cut).toEqual({ as: "internal-mitre", setting: 22.5 })
    expect(end.reach).toBe(0)
    expect(end.short).toBeCloseTo(7.456, 3)
  })
})
