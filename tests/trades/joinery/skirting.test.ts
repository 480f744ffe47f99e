import { describe, expect, it } from "vitest"
import { joineryRules } from "../../../src/trades/joinery/rules.ts"
import { runText, skirtedLength, skirtingPieces } from "../../../src/trades/joinery/skirting.ts"
import { rulesOf, surveyed } from "../../fixtures/rooms.ts"

const rules = rulesOf(joineryRules)
const base = { product: "skirting", thickness: 18, longest: 5000, without: [], architraves: [], rules }

describe("skirting of a room", () => {
  it("runs each wall between a scribe on the left and a square end on the right", () => {
    const pieces = skirtingPieces({ ...base, room: surveyed() })
    // 4,000 and 3,000 less 18 at the scribed left end of each
    expect(pieces.map((piece) => piece.length)).toEqual([3982, 2982, 3982, 2982])
    expect(pieces[0]).toMatchObject({
      mark: "R1-1-S1",
      left: { as: "scribed", setting: 45 },
      right: { as: "square", setting: 0 },
    })
  })

  it("works a room with a breast by hand", () => {
    const room = surveyed({
      outline: [
        { length: 4000, turn: "right" },
        { length: 3000, turn: "right" },
        { length: 1400, turn: "right" },
        { length: 350, turn: "left", is: "breast" },
        { length: 1200, turn: "left", is: "breast" },
        { length: 350, turn: "right", is: "breast" },
        { length: 1400, turn: "right" },
        { length: 3000, turn: "right" },
      ],
    })
    const lengths = skirtingPieces({ ...base, room }).map((piece) => piece.length)
    expect(lengths).toEqual([
      3982, // 4,000 - 18 scribe
      2982, // 3,000 - 18
      1382, // 1,400 - 18
      350, // 350 - 18 scribe + 18 external mitre
      1236, // 1,200 + 18 + 18, both ends mitred
      368, // 350 + 18 mitre, square into the corner
      1382,
      2982,
    ])
  })

  // A breast with splayed cheeks: inside angles 120 at its feet, 240 at its corners. t = 18, 18 tan 30 = 10.392.
  it("works a room with a splayed breast by hand, long points, short points and settings", () => {
    const room = surveyed({
      outline: [
        { length: 4000, turn: "right" },
        { length: 3000, turn: "right" },
        { length: 1200, turn: 60 },
        { length: 400, turn: -60, is: "breast" },
        { length: 1200, turn: -60, is: "breast" },
        { length: 400, turn: 60, is: "breast" },
        { length: 1200, turn: "right" },
        { length: 3000, turn: "right" },
      ],
      diagonals: [],
    })
    const pieces = skirtingPieces({ ...base, room })
    expect(pieces.map((piece) => [piece.length, piece.shortPoint ?? null])).toEqual([
      [3982, null],
      [2982, null],
      [1192.4, 1182], // 1,200 - 18 scribed + 10.392, bevelled into 120
      [400, 389.6], // 400 - 10.392 (18 / tan 60) + 10.392 mitre
      [1220.8, 1200], // 1,200 + 2 x 10.392
      [420.8, 400], // 400 + 10.392 mitre + 10.392 bevel
      [1189.6, null], // 1,200 - 10.392
      [2982, null],
    ])
    expect(pieces[4]!.left).toEqual({ as: "external-mitre", setting: expect.closeTo(30, 6) })
    expect(pieces[5]!.right).toEqual({ as: "square", setting: expect.closeTo(30, 6) })
    expect(pieces[6]!.left).toEqual({ as: "scribed", setting: expect.closeTo(30, 6) })
  })

  // A trapezium: wall 3 runs 700 out over 4,000. Its angle to wall 2 is atan(4,000 / 700) = 80.074, to wall 4 99.926.
  it("works a room out of square by hand", () => {
    const lean = (Math.atan(700 / 4000) * 180) / Math.PI
    const room = surveyed({
      outline: [
        { length: 4000, turn: "right" },
        { length: 3000, turn: 90 + lean },
        { length: Math.hypot(4000, 700), turn: 90 - lean },
        { length: 2300, turn: "right" },
      ],
      diagonals: [],
    })
    const pieces = skirtingPieces({ ...base, room })
    // wall 2: 3,000 - 18, its face shorter by 18 tan 9.926 = 3.15
    // wall 3: 4,060.79 - 18 / sin 80.074 (18.274) + 18 tan 9.926 (3.150)
    // wall 4: 2,300 - 18 / tan 49.963 (15.124)
    const expected = [3982, 2982, 4045.7, 2284.9]
    for (const [index, piece] of pieces.entries())
      expect(Math.abs(piece.length - expected[index]!)).toBeLessThan(0.15)
    expect(pieces[1]!.shortPoint! - (2982 - 3.15)).toBeCloseTo(0, 0)
    expect(pieces.map((piece) => Math.round(piece.right.setting * 2) / 2)).toEqual([0, 10, 10, 0])
    expect(pieces.map((piece) => Math.round(piece.left.setting * 2) / 2)).toEqual([45, 45, 50, 40])
  })

  it("stops at architraves and joins runs longer than can be handled, away from corners", () => {
    const room = surveyed({
      outline: [
        { length: 6000, turn: "right" },
        { length: 3000, turn: "right" },
        { length: 6000, turn: "right" },
        { length: 3000, turn: "right" },
      ],
      diagonals: [],
    })
    const set = { door: "D1", wall: 3, inside: { width: 768, height: 1994 }, outerFrom: 2000, outerTo: 2920 }
    const pieces = skirtingPieces({ ...base, longest: 3300, room, architraves: [set] })
    const joined = pieces.filter((piece) => piece.wall === 1)
    expect(joined).toHaveLength(2)
    // 5,982 in two parts with a 45 degree scarf of 18: together 6,000
    expect(joined.reduce((sum, piece) => sum + piece.length, 0)).toBe(6000)
    expect(joined[0]!.right).toEqual({ as: "scarf", setting: 45 })
    expect(Math.min(...joined.map((piece) => piece.length))).toBeGreaterThanOrEqual(600)
    expect(pieces.filter((piece) => piece.wall === 3).map((piece) => piece.length)).toEqual([1982, 3080])
  })

  it("closes every wall to the millimetre in generated rooms", () => {
    for (let index = 0; index < 200; index++) {
      const width = 2000 + ((index * 137) % 3000)
      const depth = 1800 + ((index * 211) % 2500)
      const room = surveyed({
        outline: [
          { length: width, turn: "right" },
          { length: depth, turn: "right" },
          { length: width, turn: "right" },
          { length: depth, turn: "right" },
        ],
        diagonals: [],
      })
      const pieces = skirtingPieces({ ...base, room, longest: 2500 })
      for (const wall of room.walls) {
        const own = pieces.filter((piece) => piece.wall === wall.number)
        const joints = own.length - 1
        const covered = own.reduce((sum, piece) => sum + piece.length, 0) - 18 * joints + 18
        expect(Math.abs(covered - wall.length)).toBeLessThan(0.2)
        for (const piece of own) expect(piece.length).toBeLessThanOrEqual(2500.1)
      }
    }
  })

  it("says the run in words", () => {
    const pieces = skirtingPieces({ ...base, room: surveyed() })
    expect(skirtedLength(pieces)).toBe(13928)
    expect(runText(pieces)).toBe("4 pieces, 13.93 m; longest 3,982")
  })
})
