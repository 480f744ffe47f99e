import { describe, expect, it } from "vitest"
import { madePieces, nosingPieces, thresholdPieces, trimPieces } from "../../../src/trades/joinery/parts.ts"
import { thresholdBars } from "../../../src/trades/joinery/thresholds.ts"
import { joineryTask } from "./task.ts"

const windows = [
  { id: "RW1", kind: "window", wall: 2, fromLeft: 600, width: 780, height: 1180, sill: 420, reveal: 240 },
  { id: "HA", kind: "hatch", wall: 3, fromLeft: 600, width: 600, height: 700, sill: 200, reveal: 0 },
]

describe("trims round openings", () => {
  const task = joineryTask({ trims: [{ opening: "RW1" }, { opening: "HA" }] }, { room: { windows } })
  const lengths = trimPieces(task).map((piece) => [piece.mark, piece.length, piece.shortPoint])

  // margin 6, trim 69: 75 a side. Head 780 + 150; legs on a sill board 1,180 + 75; short points a width less at each mitre
  it("stand on the sill board of a window: two legs and a head", () => {
    expect(lengths.slice(0, 3)).toEqual([
      ["R1-2-RW1L", 1255, 1186],
      ["R1-2-RW1H", 930, 792],
      ["R1-2-RW1R", 1255, 1186],
    ])
  })

  // 600 + 150 and 700 + 150, mitred at all four corners
  it("go round all four sides of a hatch", () => {
    expect(lengths.slice(3)).toEqual([
      ["R1-3-HAL", 850, 712],
      ["R1-3-HAH", 750, 612],
      ["R1-3-HAR", 850, 712],
      ["R1-3-HAF", 750, 612],
    ])
  })
})

describe("what is made on site", () => {
  const task = joineryTask({
    made: [
      { what: "shelf", name: "over the desk", wall: 2, product: "plank", lengths: [1200, 1200] },
      { what: "bath panel", product: "plank", lengths: [1680] },
      { what: "shelf", product: "plank", lengths: [340] },
    ],
  })

  it("is marked by what it is, numbered through the room", () => {
    expect(madePieces(task).map((piece) => [piece.mark, piece.what, piece.length])).toEqual([
      ["R1-2-H1", "shelf, over the desk", 1200],
      ["R1-2-H2", "shelf, over the desk", 1200],
      ["R1-B1", "bath panel", 1680],
      ["R1-H3", "shelf", 340],
    ])
  })
})

describe("nosings and threshold bars", () => {
  it("are cut from the products chosen for them", () => {
    const task = joineryTask({
      nosing: { lengths: [2050, 870] },
      threshold: [{ door: "D1", profile: "ramp" }],
    })
    expect(nosingPieces(task).map((piece) => [piece.mark, piece.product, piece.length])).toEqual([
      ["R1-N1", "nosing", 2050],
      ["R1-N2", "nosing", 870],
    ])
    expect(thresholdPieces(thresholdBars(task), "R1")).toMatchObject([
      { mark: "R1-D1-T", product: "bar", length: 768, wall: 1 },
    ])
  })
})
