import { describe, expect, it } from "vitest"
import { tilingFacts, tilingWork } from "../../../src/trades/tiling/work.ts"
import { task } from "./wash-room.ts"

describe("a tiled wall by hand", () => {
  // Wall 2, 1,540 long, tiled 2,000 high; tile 248 × 398 with joints of 3, open joints of 5 at both corners and the floor.
  // Across: 1,540 - 10 = 1,530. Joint on the centre: (1,530 - 3) / 2 = 763.5; 3 × 251 = 753; left 10.5.
  // Tile on the centre: (1,530 - 248) / 2 - 3 = 638; 2 × 251 = 502; left 136. So 5 whole, 136 left and right: 7.
  // Up: 2,000 - 5 = 1,995; 4 × 401 = 1,604; left 391: 4 whole rows from the top, 391 at the foot: 5 rows.
  // Area 1.540 × 2.000 = 3.080 m2. Tiles 7 × 5 = 35 of 0.098704 = 3.45464; with a tenth 3.800104 m2.
  // Adhesive 3.08 × 2.5 = 7.70 kg. Grout: 646 / 98,704 × 8 × 3 × 1.6 = 0.251321 kg a m2: 0.774068 kg.
  // Sealant: 1.540 + 2 × 2.000 = 5.54 m.
  const given = task({ walls: [{ wall: 2, top: 2000 }] })
  const work = tilingWork(given)

  it("columns and rows", () => {
    expect(work.results.fields).toEqual([
      {
        name: "Wall 2",
        width: 1540,
        height: 2000,
        area: 3.08,
        across: { whole: 5, first: 136, last: 136, from: "a tile on the centre", count: 7 },
        up: { whole: 4, first: 391, last: null, from: "a whole tile last", count: 5 },
        tiles: 35,
      },
    ])
  })

  it("tiles, adhesive, grout, sealant", () => {
    const by = (what: string) => work.quantities.find((each) => each.what.startsWith(what))!
    expect(by("Wall tile").net).toBeCloseTo(3.08, 9)
    expect(by("Wall tile").gross).toBeCloseTo(3.800104, 6)
    expect(by("Tile adhesive").net).toBeCloseTo(7.7, 9)
    expect(by("Grout").net).toBeCloseTo(0.774068, 5)
    expect(by("Sealant").net).toBeCloseTo(5.54, 9)
  })

  it("passes the tiled wall on to the decorator, and no floor", () => {
    const facts = tilingFacts(given)
    expect(facts.tiledWall).toBeCloseTo(3.08, 9)
    expect(facts).not.toHaveProperty("floorBuildUp")
  })

  it("the doorway is taken off: wall 1 less 0.768 by 1,990 less the floor of 13", () => {
    // 2.310 × 2.000 = 4.620; doorway over the finished floor 0.768 × 1.977 = 1.518336.
    expect(tilingFacts(task({ walls: [{ wall: 1, top: 2000 }] })).tiledWall).toBeCloseTo(3.101664, 6)
  })
})
