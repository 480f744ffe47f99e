import { describe, expect, it } from "vitest"
import {
  besideHinge,
  leavesMeet,
  sweepUnderSlopes,
  swingOf,
} from "../../../../src/trades/doors/hanging/swing.ts"
import { houseOf, surveyed } from "../../../fixtures/rooms.ts"

const door = (id: string, hinges: "left" | "right") => ({
  id,
  name: id,
  between: ["R1", "R2"],
  swingsInto: "R1",
  hinges,
  lining: "keep",
  lengthsTo: "lining",
  heightsFrom: "deck",
  widths: [768],
  heights: [1992],
  wall: 108,
})
const house = houseOf({ doors: [door("D1", "left"), door("D2", "right")] })

/** A room 4,000 by 3,000, wall 1 along the top; a slope of 45 degrees rises from wall 2, dwarf 1,000. */
function room(doors: unknown[]) {
  return surveyed(
    {
      doors,
      outline: [
        { length: 4000, turn: "right" },
        { length: 3000, turn: "right", is: "knee-wall" },
        { length: 4000, turn: "right" },
        { length: 3000, turn: "right" },
      ],
      ceiling: { heights: [2400], slopes: [{ wall: 2, dwarf: 1000, pitch: 45 }] },
    },
    house,
  )
}

describe("a leaf as it swings", () => {
  // Wall 1 runs along +x and the inside lies below it: hinges left stand at the near side and the open leaf points down.
  it("turns on its hinges into the room", () => {
    const here = room([{ door: "D1", wall: 1, fromLeft: 500 }])
    const swing = swingOf(here.doors[0]!, here, "left")!
    expect(swing.hinge.x).toBeCloseTo(here.walls[0]!.start.x + 500, 6)
    expect(swing.sense).toBe(-1)
    expect(swingOf(here.doors[0]!, here, "right")!.hinge.x).toBeCloseTo(here.walls[0]!.start.x + 1268, 6)
  })

  // Wall 2 is the right-hand wall. A doorway ending 200 from it, hinges on the right: shut, the hinge edge is 200 from the dwarf wall, but the
  // slope is lowest over the leaf where it stands nearest: at a quarter of the leaf's width open square, 200 out: 1,000 + 200.
  it("meets a slope beside it, 1,200 over the deck at 200 from the dwarf wall", () => {
    const here = room([{ door: "D2", wall: 1, fromLeft: 4000 - 200 - 768 }])
    const swing = swingOf(here.doors[0]!, here, "right")!
    const sweep = sweepUnderSlopes(swing, here)
    expect(sweep?.at).toBe(90)
    expect(sweep?.ceiling).toBeCloseTo(1200, 0)
  })

  it("is clear of a slope it does not reach: 1,400 of run to the flat at 2,400", () => {
    const here = room([{ door: "D1", wall: 1, fromLeft: 200 }])
    expect(sweepUnderSlopes(swingOf(here.doors[0]!, here, "left")!, here)).toBeNull()
  })

  // In the corner of walls 1 and 2: hinges 100 from the corner on both, quarter discs of 768 about points 141 apart.
  it("meets another leaf across a corner, not one at the far end of the wall", () => {
    const corner = room([
      { door: "D2", wall: 1, fromLeft: 4000 - 100 - 768 },
      { door: "D1", wall: 2, fromLeft: 100 },
    ])
    const a = swingOf(corner.doors[0]!, corner, "right")!
    const b = swingOf(corner.doors[1]!, corner, "left")!
    expect(leavesMeet(a, b)).toBe(true)
    expect(leavesMeet(b, a)).toBe(true)
    const far = room([
      { door: "D1", wall: 1, fromLeft: 100 },
      { door: "D2", wall: 1, fromLeft: 3000 },
    ])
    expect(leavesMeet(swingOf(far.doors[0]!, far, "left")!, swingOf(far.doors[1]!, far, "right")!)).toBe(
      false,
    )
  })

  it("has so much wall beside its hinges", () => {
    const here = room([{ door: "D1", wall: 1, fromLeft: 90 }])
    expect(besideHinge(here.doors[0]!, here.walls[0]!, "left")).toBe(90)
    expect(besideHinge(here.doors[0]!, here.walls[0]!, "right")).toBeCloseTo(4000 - 90 - 768, 0)
  })
})
