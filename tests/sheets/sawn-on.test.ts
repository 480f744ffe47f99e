import { describe, expect, it } from "vitest"
import type { CutBar } from "../../src/kernels/cutting/problem.ts"
import { sawnOn } from "../../src/sheets/sawn-on.ts"
import type { Piece } from "../../src/trades/trade.ts"
import { houseOf, jobFacts, surveyed } from "../fixtures/rooms.ts"

const file = houseOf({
  storeys: [
    { id: "ground", name: "Ground floor", deck: 0, finishNow: 0, base: "timber" },
    { id: "first", name: "First floor", deck: 2600, finishNow: 0, base: "timber" },
    { id: "attic", name: "Attic", deck: 5200, finishNow: 0, base: "timber" },
  ],
})
const rooms = ["ground", "first", "attic"].map((storey) =>
  surveyed({ id: storey.toUpperCase(), storey }, file),
)
const { house } = jobFacts({ house: file, rooms })
const pieces = new Map(rooms.map((room) => [room.id, { room: room.id } as Piece]))
const on = (length: number, marks: string[]) =>
  sawnOn({ length, pieces: marks } as CutBar, { pieces, house, longest: 3300 })

describe("the storey a length is sawn on", () => {
  it.each([
    { what: "short, all for the attic", length: 2400, marks: ["ATTIC"], name: "Attic", tooLong: false },
    { what: "too long for the stair", length: 4400, marks: ["ATTIC"], name: "Ground floor", tooLong: true },
    {
      what: "long, but it goes up no stair",
      length: 4400,
      marks: ["GROUND"],
      name: "Ground floor",
      tooLong: false,
    },
    {
      what: "short, for two storeys",
      length: 2400,
      marks: ["ATTIC", "FIRST"],
      name: "First floor",
      tooLong: false,
    },
  ])("$what: $name", ({ length, marks, name, tooLong }) => {
    expect(on(length, marks)).toEqual({ name, tooLong })
  })

  it("is not told of rooms that are not surveyed", () => {
    expect(on(2400, ["X"])).toBeNull()
  })
})
