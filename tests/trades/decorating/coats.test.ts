import { describe, expect, it } from "vitest"
import { isWet, paintFor } from "../../../src/trades/decorating/coats.ts"
import { roomPaint } from "../../../src/trades/decorating/room-paint.ts"
import { attic } from "./attic.ts"

describe("coats of a room", () => {
  it("the maker's rate goes first, but a mist coat keeps the rate of its mix", () => {
    const { lines } = roomPaint(attic({ products: { mist: "sage" } }))
    expect(lines.find((line) => line.coat.key === "colour-1")).toMatchObject({ rate: 13, rateFrom: "maker" })
    expect(lines.find((line) => line.coat.key === "mist")).toMatchObject({
      rate: 9,
      rateFrom: "decor-rate-mist",
    })
  })

  it("an author's dilution is taken: 1 to 1 takes half the mix as paint", () => {
    const { lines } = roomPaint(attic({ mist: { paint: 1, water: 1 } }))
    const ceiling = lines.find((line) => line.coat.key === "mist" && line.surface === "Level ceiling")!
    expect(ceiling.paint).toBeCloseTo(6.4 / 9 / 2, 9)
    expect(ceiling.water).toBeCloseTo(6.4 / 9 / 2, 9)
  })

  it("mist and ceiling fall back to the white; undercoat never does", () => {
    const { input, job } = attic()
    expect(paintFor("mist", input, job)?.id).toBe("white")
    expect(paintFor("ceilingWhite", input, job)?.id).toBe("white")
    expect(paintFor("primer", input, job)).toBeUndefined()
  })

  it("bathrooms are wet unless the author says otherwise", () => {
    const task = attic()
    expect(isWet(task)).toBe(false)
    expect(isWet({ ...task, room: { ...task.room, use: "bathroom" } })).toBe(true)
    expect(isWet({ ...attic({ wet: false }), room: { ...task.room, use: "bathroom" } })).toBe(false)
  })

  it("an accent wall takes its own product for colour, the common white below it", () => {
    const { lines } = roomPaint(attic({ accents: [{ wall: 2, colour: "blue", product: "satin" }] }))
    const wall = lines.filter((line) => line.surface === "Wall 2")
    expect(wall.map((line) => [line.coat.key, line.product?.id])).toEqual([
      ["mist", "white"],
      ["white", "white"],
      ["colour-1", "satin"],
      ["colour-last", "satin"],
    ])
  })
})
