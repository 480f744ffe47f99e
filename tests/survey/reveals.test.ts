import { describe, expect, it } from "vitest"
import { revealsOf } from "../../src/survey/reveals.ts"

const opening = { id: "W1", wall: 3, fromLeft: 500, width: 1200, height: 1000, sill: 900, reveal: 150 }

describe("revealsOf", () => {
  it("goes up both sides and over the head of a window, and all round a roof window or hatch", () => {
    const girth = (kind: "window" | "roof-window" | "hatch") => revealsOf([{ ...opening, kind }])[0]!
    // 2 x 1000 + 1200 = 3200; 2 x (1000 + 1200) = 4400; by 0.15 m
    expect(girth("window")).toMatchObject({ girth: 3200, inSlope: false })
    expect(girth("window").area).toBeCloseTo(0.48, 9)
    expect(girth("roof-window")).toMatchObject({ girth: 4400, inSlope: true })
    expect(girth("hatch").area).toBeCloseTo(0.66, 9)
  })

  it("has none where no depth was taped", () => {
    expect(revealsOf([{ ...opening, kind: "window", reveal: 0 }])).toEqual([])
  })
})
