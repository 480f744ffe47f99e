import { describe, expect, it } from "vitest"
import { voidsOut } from "../../src/survey/openings-out.ts"
import { liningWorked, slopeFactors, usableHeight, voidsNotDeducted } from "../facts/measurement.ts"
import { surveyed } from "../fixtures/rooms.ts"

const { smm7, nrm2 } = voidsNotDeducted

describe("voidsOut", () => {
  it(`keeps small voids in (${smm7.source})`, () => {
    // 1.0 x 0.5 = 0.50 stays in; 1.0 x 0.51 = 0.51 comes out; a door 0.8 x 2.0 = 1.6 comes out.
    expect(voidsOut([{ width: 1000, height: 500 }], smm7.value)).toBe(0)
    expect(voidsOut([{ width: 1000, height: 510 }], smm7.value)).toBeCloseTo(0.51, 9)
    expect(
      voidsOut(
        [
          { width: 800, height: 2000 },
          { width: 600, height: 600 },
        ],
        smm7.value,
      ),
    ).toBeCloseTo(1.6, 9)
  })

  it(`keeps larger ones in by the later rules (${nrm2.source})`, () => {
    const window = { width: 1000, height: 1000 }
    expect(voidsOut([window], nrm2.value)).toBe(0)
    expect(voidsOut([window], smm7.value)).toBeCloseTo(1, 9)
  })

  it("finds nothing to take out of a plain surface", () => {
    expect(voidsOut([], smm7.value)).toBe(0)
  })
})

describe("areas as they are measured", () => {
  it.each(slopeFactors)("a slope of $value.pitch degrees is $value.factor times its plan", ({ value }) => {
    const room = surveyed({
      ceiling: { heights: [2400], slopes: [{ wall: 2, dwarf: 1000, pitch: value.pitch }] },
    })
    const slope = room.ceiling.parts.find(({ kind }) => kind === "slope")!
    expect(slope.area / slope.planArea).toBeCloseTo(value.factor, 4)
  })

  it("a reveal is girth by depth, as a lining is", () => {
    const { run, lining, area } = liningWorked.value
    // An opening 1,200 wide and 2,000 high has the same run of 5.2 m up both sides and over the head.
    const room = surveyed({
      windows: [
        {
          id: "W1",
          kind: "window",
          wall: 3,
          fromLeft: 500,
          width: 1200,
          height: 2000,
          sill: 0,
          reveal: lining,
        },
      ],
    })
    expect(room.reveals[0]!.girth / 1000).toBe(run)
    expect(room.reveals[0]!.area).toBeCloseTo(area, 3)
  })

  it(`floor below ${usableHeight.value} is told apart`, () => {
    // 45 degrees from a dwarf wall of 1000: 1500 is reached 500 in; 3000 long: 1.5 m2 of 12.
    const room = surveyed({ ceiling: { heights: [2400], slopes: [{ wall: 2, dwarf: 1000, pitch: 45 }] } })
    expect(room.area - room.headroom(usableHeight.value, 0)).toBeCloseTo(1.5, 3)
  })
})
