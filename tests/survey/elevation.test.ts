import { describe, expect, it } from "vitest"
import { heightOver } from "../../src/survey/elevation.ts"
import { surveyed } from "../fixtures/rooms.ts"

const tops = (room: ReturnType<typeof surveyed>, wall: number) =>
  room.walls[wall - 1]!.elevation.slice(2).map(({ x, y }) => [Math.round(x), Math.round(y)])

describe("wallElevation", () => {
  it("raises a dormer to its own level, and counts its cheeks", () => {
    // Wall 2 is a dwarf wall of 1000 under 45 degrees; the dormer's ceiling at 2200 ends 1200 into the room, where the slope has come up to it.
    const room = surveyed({
      ceiling: {
        heights: [2400],
        slopes: [{ wall: 2, dwarf: 1000, pitch: 45 }],
        dormers: [{ wall: 2, fromLeft: 800, width: 1400, height: 2200 }],
      },
    })
    expect(tops(room, 2)).toEqual([
      [3000, 1000],
      [2200, 1000],
      [2200, 2200],
      [800, 2200],
      [800, 1000],
      [0, 1000],
    ])
    // 3.0 x 1.0 + 1.4 x 1.2 and two triangular cheeks of 1.2 x 1.2 / 2 = 3 + 1.68 + 1.44
    expect(room.walls[1]!.gross).toBeCloseTo(6.12, 6)
    // The slope: level run 1400 over 3000, less the dormer's 1400 x 1200, up the slope x sqrt 2
    expect(room.ceiling.slopeArea).toBeCloseTo((4.2 - 1.68) * Math.SQRT2, 3)
  })

  it("ends a dormer higher than the ceiling where the slope meets the ceiling", () => {
    const room = surveyed({
      ceiling: {
        heights: [2400],
        slopes: [{ wall: 2, dwarf: 1000, pitch: 45 }],
        dormers: [{ wall: 2, fromLeft: 800, width: 1400, height: 2500 }],
      },
    })
    // Cheeks: 1400 long, 1500 high at the window and 100 at the ceiling: 2 x 1.4 x (1.5 + 0.1) / 2 = 2.24
    expect(room.walls[1]!.gross).toBeCloseTo(3 + 1.4 * 1.5 + 2.24, 6)
  })

  it("comes down under a bulkhead along its wall and across its neighbours", () => {
    // A boxed duct along wall 3, 300 deep, underside at 2100.
    const room = surveyed({
      ceiling: { heights: [2400], obstacles: [{ name: "boxed duct", height: 2100, wall: 3, depth: 300 }] },
    })
    expect(tops(room, 3)).toEqual([
      [4000, 2100],
      [0, 2100],
    ])
    expect(tops(room, 2)).toEqual([
      [3000, 2100],
      [2700, 2100],
      [2700, 2400],
      [0, 2400],
    ])
    expect(tops(room, 1)).toEqual([
      [4000, 2400],
      [0, 2400],
    ])
    expect(heightOver(room.walls[1]!.elevation, 2700)).toBeCloseTo(2100, 3)
  })

  it("comes to a point in a gable under two slopes", () => {
    // 3000 across, 500 at both sides, 45 degrees: the ridge at 500 + 1500 = 2000 over the middle.
    const room = surveyed({
      ceiling: {
        heights: [2600],
        slopes: [
          { wall: 1, dwarf: 500, pitch: 45 },
          { wall: 3, dwarf: 500, pitch: 45 },
        ],
      },
    })
    expect(tops(room, 2)).toEqual([
      [3000, 500],
      [1500, 2000],
      [0, 500],
    ])
    expect(room.walls[1]!.gross).toBeCloseTo(3 * 0.5 + (3 * 1.5) / 2, 6)
    expect(room.volume).toBeCloseTo(4 * (1.5 + 2.25), 3)
  })

  it("comes down to nothing where a slope starts at the floor", () => {
    const room = surveyed({ ceiling: { heights: [2400], slopes: [{ wall: 3, dwarf: 0, pitch: 45 }] } })
    // Wall 2 runs from wall 1 (2400) to wall 3 (0); 2400 from its right end the slope meets the ceiling.
    expect(tops(room, 2)).toEqual([
      [600, 2400],
      [0, 2400],
    ])
    expect(heightOver(room.walls[1]!.elevation, 1800)).toBeCloseTo(1200, 6)
    expect(room.walls[1]!.gross).toBeCloseTo(0.6 * 2.4 + (2.4 * 2.4) / 2, 6)
  })
})
