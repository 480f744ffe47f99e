import { describe, expect, it } from "vitest"
import {
  areaOf,
  isMarkOf,
  kept,
  lengthOf,
  markOf,
  type Stretch,
} from "../../../../src/trades/floors/layout/boards.ts"

const stretch = (from: number, to: number, low = 0, high = 189): Stretch => ({
  board: 1,
  room: null,
  of: 1860,
  from,
  to,
  low,
  high,
})

describe("stretches of a board", () => {
  it("length and area", () => {
    expect(lengthOf(stretch(300, 1860))).toBe(1560)
    expect(areaOf(stretch(0, 1000, 0, 90))).toBe(90_000)
  })

  it("a cut takes the edge it goes through", () => {
    expect(kept(stretch(0, 1860), 189)).toEqual({ left: true, right: true, groove: true, tongue: true })
    expect(kept(stretch(300, 1860), 189)).toEqual({ left: false, right: true, groove: true, tongue: true })
    expect(kept(stretch(0, 1500, 0, 90), 189)).toEqual({
      left: true,
      right: false,
      groove: true,
      tongue: false,
    })
    expect(kept(stretch(0, 1500, 93, 189), 189)).toEqual({
      left: true,
      right: false,
      groove: false,
      tongue: true,
    })
  })

  it("the mark tells row, strip and ends", () => {
    expect(markOf("4", stretch(300, 1860), 189)).toBe("4R")
    expect(markOf("4", stretch(0, 300), 189)).toBe("4L")
    expect(markOf("4a", stretch(300, 700), 189)).toBe("4aM")
    expect(markOf("1", stretch(0, 1860, 0, 90), 189)).toBe("1GW")
    expect(markOf("9", stretch(200, 1860, 93, 189), 189)).toBe("9TR")
  })

  it("a mark belongs to its own row only", () => {
    expect(isMarkOf("4R", "4")).toBe(true)
    expect(isMarkOf("4GL2", "4")).toBe(true)
    expect(isMarkOf("4aR", "4")).toBe(false)
    expect(isMarkOf("14R", "4")).toBe(false)
  })
})
