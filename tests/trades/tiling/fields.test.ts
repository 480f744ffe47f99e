import { describe, expect, it } from "vitest"
import { tiledArea, tileFields } from "../../../src/trades/tiling/fields.ts"
import { tilingWork } from "../../../src/trades/tiling/work.ts"
import { task } from "./wash-room.ts"

describe("a floor that is no rectangle", () => {
  // 3,000 by 3,000 less a corner of 1,500 by 1,500, tiles of 300, joints of 3, open joints of 5.
  // Across: 2,990 clear, a joint on the centre: (2,990 - 3) / 2 = 1,493.5; 4 × 303 = 1,212; cut 281.5: 10 columns, and 10 rows.
  // The corner takes away 5 columns of 5 rows: 75 tiles, not 100.
  const turns = ["right", "right", "left", "right", "right", "right"]
  const outline = [3000, 1500, 1500, 1500, 1500, 3000].map((length, index) => ({
    length,
    turn: turns[index],
  }))
  const given = task({ floor: true }, { outline, ceiling: { heights: [2290] } })
  const [floor] = tileFields(given)

  it("takes the tiles of its true outline", () => {
    expect(floor!.across).toMatchObject({ whole: 8, first: 281.5, last: 281.5 })
    expect(floor!.pieces).toHaveLength(75)
    expect(floor!.area).toBeCloseTo(6.75, 6)
    // 75 × 0.09 m2 and a tenth.
    expect(tilingWork(given).quantities[0]!.gross).toBeCloseTo(75 * 0.09 * 1.1, 6)
  })

  it("a hole that no floor runs over takes its tiles away too", () => {
    // A duct of 1,500 by 1,500 in the lower left corner of the L: the columns and rows of 5 by 5 there.
    const holes = [
      { id: "duct", name: "duct", wall: 5, fromLeft: 0, off: 0, width: 1500, depth: 1500, floored: false },
    ]
    const holed = task({ floor: true }, { outline, ceiling: { heights: [2290] }, holes })
    expect(tileFields(holed)[0]!.pieces).toHaveLength(50)
  })
})

describe("a wall under a slope", () => {
  // Wall 2 is 1,540 long; from its far end the slope rises at 45 degrees from 900 over the deck, 887 over the finished floor.
  // It reaches 2,000 at 1,113 from that end: a triangle of 1.113 × 1.113 / 2 = 0.619385 is missing from 3.080 m2.
  const ceiling = { heights: [2290], slopes: [{ wall: 3, dwarf: 900, pitch: 45 }] }
  const given = task({ walls: [{ wall: 2, top: 2000 }] }, { ceiling })

  it("is tiled up to the slope only", () => {
    const wall = given.room.walls[1]!
    expect(tiledArea(given, given.input.walls[0]!, wall)).toBeCloseTo(3.08 - 0.6193845, 5)
    const [field] = tileFields(given)
    // Columns begin at 5, 144, 395, 646, 897, 1,148, 1,399; their lower left ends decide the rows that reach under the slope:
    // from the foot 391, then 401 each; height over the finished floor at a column's left is 2,427 less that.
    // 2,422; 2,283; 2,032 reach the top row (1,602 and over): 5, 5, 5; 1,781: 5; 1,530: 4; 1,279: 4; 1,028: 3.
    expect(field!.pieces).toHaveLength(31)
  })
})

describe("an opening", () => {
  it("takes away the tiles that lie wholly in it", () => {
    // Window of 800 by 800, 900 over the deck, in wall 2: more than one tile of 248 by 398 lies wholly in it.
    const windows = [{ id: "W", kind: "window", wall: 2, fromLeft: 300, width: 800, height: 800, sill: 913 }]
    const [field] = tileFields(task({ walls: [{ wall: 2, top: 2000 }] }, { windows }))
    // Columns 395 to 643, 646 to 894 lie within 300 to 1,100, 144 to 392 and 897 to 1,145 do not.
    // Rows over the finished floor: 5 to 396, 399 to 797, 800 to 1,198, 1,201 to 1,599, 1,602 to 2,000; 900 to 1,700 holds the fourth.
    expect(field!.pieces).toHaveLength(35 - 2)
    expect(field!.area).toBeCloseTo(3.08 - 0.64, 6)
  })
})
