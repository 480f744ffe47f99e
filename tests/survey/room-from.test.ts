import { describe, expect, it } from "vitest"
import { area } from "../../src/kernels/polygon/measure.ts"
import { surveyed } from "../fixtures/rooms.ts"
import { demoRoom } from "./demo.ts"

/**
 * The east attic bedroom by hand. tan 42 = 0.900404, sin 42 = 0.669131, cos 42 = 0.743145. Heights from the deck.
 *
 *   slope over wall 2: rise 2310 - 980 = 1330, level run 1330 / 0.900404 = 1477.1, up the slope 1330 / 0.669131 = 1987.7
 *   slope over wall 8: rise 2310 - 940 = 1370, level run 1370 / 0.900404 = 1521.5, up the slope 1370 / 0.669131 = 2047.4
 *   level ceiling across: 4860 - 1477.1 - 1521.5 = 1861.4
 *
 * Every figure was taped to 3 mm, and the section and the outline are adjusted within that: hence the tolerances.
 */
const nearly = 3

describe("the east attic bedroom, worked by hand", () => {
  const room = demoRoom("A1")
  const wall = (number: number) => room.walls[number - 1]!
  const expectPolygon = (number: number, corners: [number, number][]) => {
    const { elevation } = wall(number)
    expect(elevation, `wall ${number}`).toHaveLength(corners.length)
    corners.forEach(([x, y], index) => {
      expect(Math.abs(elevation[index]!.x - x), `wall ${number}, corner ${index + 1}, x`).toBeLessThan(nearly)
      expect(Math.abs(elevation[index]!.y - y), `wall ${number}, corner ${index + 1}, y`).toBeLessThan(nearly)
    })
  }

  it("has each wall's true elevation", () => {
    // Wall 1: up from the dwarf wall of 940 to the flat at 1521.5 from its left, level to 4860 - 1477.1 = 3382.9, down to 980.
    expectPolygon(1, [
      [0, 0],
      [4860, 0],
      [4860, 980],
      [3382.9, 2310],
      [1521.5, 2310],
      [0, 940],
    ])
    expectPolygon(2, [
      [0, 0],
      [3952, 0],
      [3952, 980],
      [0, 980],
    ])
    // Wall 3, the gable up to the breast: from 980 to the flat at 1477.1, level to its end at 1793.
    expectPolygon(3, [
      [0, 0],
      [1793, 0],
      [1793, 2310],
      [1477.1, 2310],
      [0, 980],
    ])
    for (const [number, length] of [
      [4, 345],
      [5, 1260],
      [6, 345],
    ] as const)
      expectPolygon(number, [
        [0, 0],
        [length, 0],
        [length, 2310],
        [0, 2310],
      ])
    // Wall 7: level to 1793 - 1521.5 = 271.5, then down to 940.
    expectPolygon(7, [
      [0, 0],
      [1793, 0],
      [1793, 940],
      [271.5, 2310],
      [0, 2310],
    ])
    expectPolygon(8, [
      [0, 0],
      [3940, 0],
      [3940, 940],
      [0, 940],
    ])
  })

  it("has the areas of its walls", () => {
    // Wall 1: 1521.5 x (940 + 2310) / 2 + 1861.4 x 2310 + 1477.1 x (2310 + 980) / 2
    //       = 2,472,438 + 4,299,834 + 2,429,830 = 9.202 m2; less D1 845 x 2,055 and D3 768 x 2,054 = 1.736 + 1.577 = 3.314
    expect(wall(1).gross).toBeCloseTo(9.202, 1)
    expect(wall(1).gross - wall(1).net).toBeCloseTo(3.314, 2)
    // Wall 3: 1477.1 x (980 + 2310) / 2 + (1793 - 1477.1) x 2310 = 2,429,830 + 729,729 = 3.160 m2
    expect(wall(3).gross).toBeCloseTo(3.16, 1)
    // Wall 7: 271.5 x 2310 + 1521.5 x (2310 + 940) / 2 = 627,165 + 2,472,438 = 3.100 m2
    expect(wall(7).gross).toBeCloseTo(3.1, 1)
    expect(area(wall(5).elevation) / 1e6).toBeCloseTo(1.26 * 2.31, 2)
  })

  it("has its slopes, level ceiling and roof windows", () => {
    // Across the room walls 2 and 8 are 3952 and 3940 long: about 3950 over the one slope, 3942 over the other.
    // 1.9877 x 3.950 + 2.0474 x 3.942 = 7.851 + 8.071 = 15.922 m2; windows 2 x 0.780 x 1.180 = 1.841 out: 14.081
    expect(room.ceiling.slopeArea).toBeCloseTo(15.92, 1)
    expect(room.ceiling.slopeNet).toBeCloseTo(14.08, 1)
    expect(room.ceiling.slopeArea - room.ceiling.slopeNet).toBeCloseTo(1.8408, 6)
    // Level: 1.8614 x 3.946 less the breast, 1.260 x 0.345 x sin 87 = 0.434: 7.345 - 0.434 = 6.911 m2
    expect(room.ceiling.flatArea).toBeCloseTo(6.91, 1)
    // Reveals of the roof windows: 2 x (780 + 1180) x 240 = 0.941 m2 each
    expect(room.reveals.map(({ opening, area: face }) => [opening, Number(face.toFixed(4))])).toEqual([
      ["RW1", 0.9408],
      ["RW2", 0.9408],
    ])
  })

  it("has its 1.5 m line from the finished floor, not from the deck", () => {
    // Oak 14 on underlay 5: the line lies 1519 over the deck. (1519 - 980) / 0.900404 = 598.6 from wall 2;
    // (1519 - 940) / 0.900404 = 643.0 from wall 8. Across: 4853 - 598.6 - 643.0 = 3611 by 3946, less the breast:
    // 14.250 - 0.434 = 13.816 m2. From the deck it would be 16.7 mm more on each side: 13.95 m2.
    expect(room.headroom(1500, 19)).toBeCloseTo(13.82, 1)
    expect(room.headroom(1500, 0) - room.headroom(1500, 19)).toBeCloseTo(
      (2 * 19 * 3.946) / 0.900404 / 1000,
      2,
    )
    // 2.0 m: (2019 - 980) / 0.900404 = 1153.9; (2019 - 940) / 0.900404 = 1198.4: 4853 - 2352.3 = 2500.7 by 3946 - 0.434 = 9.434
    expect(room.headroom(2000, 19)).toBeCloseTo(9.43, 1)
    const distances = room
      .headroomPlan(1500, 19)
      .flatMap(({ outline }) => outline)
      .map(({ x, y }) => {
        const { start, end, length } = wall(2)
        return ((end.x - start.x) * (y - start.y) - (end.y - start.y) * (x - start.x)) / -length
      })
    expect(Math.min(...distances)).toBeGreaterThan(598.6 - nearly)
    expect(Math.min(...distances)).toBeLessThan(598.6 + nearly)
  })

  it("holds the air its sections give", () => {
    // Section at wall 1 is 9.202 m2 over a depth of 3946 on average, less the breast 0.434 x 2.31: 36.31 - 1.00 = 35.31 m3;
    // the far gable is 14 mm narrower at full height (0.03 m2 x half the depth): 35.25.
    expect(room.volume).toBeGreaterThan(35.15)
    expect(room.volume).toBeLessThan(35.35)
  })
})

describe("roomFrom", () => {
  it("knows joists by the room, else by the storey", () => {
    expect(demoRoom("A1").joists).toEqual({ wall: 1, centres: 400, firstFrom: 60 })
    expect(demoRoom("A2").joists).toBeUndefined()
    expect(surveyed({ joists: { wall: 2, centres: 450 } }).joists).toEqual({ wall: 2, centres: 450 })
  })

  it("says when an opening reaches above the wall it stands in", () => {
    const room = surveyed({
      ceiling: { heights: [2400], slopes: [{ wall: 2, dwarf: 900, pitch: 45 }] },
      windows: [{ id: "W1", kind: "window", wall: 2, fromLeft: 500, width: 800, height: 600, sill: 500 }],
    })
    expect(room.findings.map(({ code }) => code)).toEqual(["opening-above-wall"])
  })
})
