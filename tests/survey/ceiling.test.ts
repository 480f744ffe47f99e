import { describe, expect, it } from "vitest"
import { roomFile } from "../../src/intake/schema/room.ts"
import type { Point } from "../../src/kernels/polygon/point.ts"
import { ceilingHeight, overhead } from "../../src/survey/ceiling.ts"
import { roomWritten, surveyed } from "../fixtures/rooms.ts"

const ceiling = {
  heights: [2400],
  slopes: [{ wall: 2, dwarf: 1000, pitch: 45 }],
  obstacles: [
    { name: "purlin", height: 1960 },
    { name: "bulkhead", height: 2000, wall: 4, fromLeft: 1000, width: 1000, depth: 500 },
  ],
}

describe("ceilingParts", () => {
  it("tiles the plan: slopes, level ceiling and what is brought down make up the room", () => {
    const room = surveyed({ ceiling })
    const plan = room.ceiling.parts.reduce((sum, part) => sum + part.planArea, 0)
    expect(plan).toBeCloseTo(room.area, 4)
    const areaOf = (kind: string) =>
      room.ceiling.parts.filter((part) => part.kind === kind).reduce((sum, part) => sum + part.area, 0)
    // Level run of the slope 1400 over 3000; the bulkhead 1000 x 500 hangs under the level part.
    expect(areaOf("slope")).toBeCloseTo(4.2 * Math.SQRT2, 4)
    expect(areaOf("bulkhead")).toBeCloseTo(0.5, 4)
    expect(areaOf("flat")).toBeCloseTo(12 - 4.2 - 0.5, 4)
    // Air: 12 x 2.4 less the wedge under the slope 1.4 x 1.4 / 2 x 3 and the bulkhead 0.5 x 0.4
    expect(room.volume).toBeCloseTo(28.8 - 2.94 - 0.2, 3)
  })

  it("takes a bulkhead out of the floor that has a headroom above its underside, and a purlin without a place not", () => {
    const room = surveyed({ ceiling })
    // Over 1.5 m: the slope reaches it 500 in: 12 - 1.5 = 10.5; the bulkhead gives 2.0 m.
    expect(room.headroom(1500, 0)).toBeCloseTo(10.5, 3)
    // Over 2.1 m: 1100 in, and not under the bulkhead.
    expect(room.headroom(2100, 0)).toBeCloseTo(12 - 3.3 - 0.5, 3)
  })

  it("gives the height over any point", () => {
    const file = roomFile.parse(roomWritten({ ceiling }))
    const corners: Point[] = [
      { x: 0, y: 0 },
      { x: 4000, y: 0 },
      { x: 4000, y: -3000 },
      { x: 0, y: -3000 },
    ]
    const over = overhead(file.ceiling, (wall) => [corners[wall - 1]!, corners[wall % 4]!])
    expect(ceilingHeight(over, { x: 1500, y: -500 })).toBeCloseTo(2400, 6)
    expect(ceilingHeight(over, { x: 3500, y: -500 })).toBeCloseTo(1500, 6)
    // Wall 4 runs from corner 4 up to corner 1: 1000 from its left end is y = -2000.
    expect(ceilingHeight(over, { x: 250, y: -1500 })).toBeCloseTo(2000, 6)
  })

  it("takes roof windows out of the slope they stand in, and of no other", () => {
    const room = surveyed({
      ceiling: {
        heights: [2400],
        slopes: [
          { wall: 2, dwarf: 1000, pitch: 45 },
          { wall: 4, dwarf: 1000, pitch: 45 },
        ],
      },
      windows: [
        { id: "RW1", kind: "roof-window", wall: 4, fromLeft: 1000, width: 780, height: 1180, sill: 300 },
      ],
    })
    const out = room.ceiling.parts.map((part) => [part.wall, Number((part.area - part.net).toFixed(4))])
    expect(out).toContainEqual([4, 0.9204])
    expect(out).toContainEqual([2, 0])
  })
})
