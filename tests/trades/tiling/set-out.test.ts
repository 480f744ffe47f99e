import { describe, expect, it } from "vitest"
import { centred, fromEnd, leastCut, type SetOut } from "../../../src/trades/tiling/set-out.ts"

/** Tiles, cuts and joints laid end to end, mm. */
function laid(out: SetOut, tile: number, joint: number): number {
  return out.whole * tile + (out.first ?? 0) + (out.last ?? 0) + (out.count - 1) * joint
}

describe("tiles set out from the centre", () => {
  it("1,000 clear with 200 tiles and 3 joints: joint on centre leaves 92.5, tile on centre leaves 194 (by hand)", () => {
    // Joint on centre: (1000 - 3) / 2 = 498.5 a side; 2 tiles and 2 joints are 406; left 92.5.
    // Tile on centre: (1000 - 200) / 2 - 3 = 397; 1 tile and 1 joint are 203; left 194.
    const out = centred({ width: 1000, tile: 200, joint: 3 })
    expect(out).toMatchObject({ whole: 3, first: 194, last: 194, count: 5, from: "a tile on the centre" })
    expect(laid(out, 200, 3)).toBeCloseTo(1000, 9)
  })

  it("an exact fit has no cut: 5 tiles of 200 with 4 joints of 3 are 1,012", () => {
    expect(centred({ width: 1012, tile: 200, joint: 3 })).toMatchObject({
      whole: 5,
      first: null,
      last: null,
      count: 5,
    })
  })

  it("a field no wider than a tile is one tile", () => {
    expect(centred({ width: 120, tile: 200, joint: 3 })).toMatchObject({
      whole: 0,
      first: 120,
      last: null,
      count: 1,
    })
    expect(centred({ width: 200, tile: 200, joint: 3 })).toMatchObject({ whole: 1, first: null, count: 1 })
  })

  it("fills every width to the millimetre; end cuts equal and never under half a tile from two tiles on", () => {
    const wrong: string[] = []
    for (const tile of [97, 150, 200, 248, 300, 600]) {
      for (const joint of [1, 2, 3, 5]) {
        for (let width = tile + 1; width <= 4000; width += 7) {
          const out = centred({ width, tile, joint })
          // An exact fit may leave the field up to one joint short at each end: the open joint is that much wider.
          const short = width - laid(out, tile, joint)
          const fits =
            out.first === null ? short >= -1e-6 && short <= 2 * joint + 1e-6 : Math.abs(short) < 1e-6
          const half = width < 2 * tile + joint || (leastCut(out) ?? tile) >= tile / 2 - joint
          if (!fits || !half || out.first !== out.last || (out.first ?? 0) > tile)
            wrong.push(`${width}/${tile}/${joint}`)
        }
      }
    }
    expect(wrong).toEqual([])
  })
})

describe("tiles set out from a whole one", () => {
  it("2,000 less 5 at the floor, 248 tiles and 3 joints: 7 whole and a cut of 238 (by hand: 1995 - 7 × 251)", () => {
    expect(fromEnd({ width: 1995, tile: 248, joint: 3 }, "last")).toMatchObject({
      whole: 7,
      first: 238,
      last: null,
      count: 8,
    })
    expect(fromEnd({ width: 1995, tile: 248, joint: 3 }, "first")).toMatchObject({
      whole: 7,
      first: null,
      last: 238,
    })
  })
})
