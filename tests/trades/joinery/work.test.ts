import { describe, expect, it } from "vitest"
import { allOf, joineryWork, roomPieces } from "../../../src/trades/joinery/work.ts"
import { joineryTask } from "./task.ts"

describe("pieces of a room", () => {
  const written = {
    nosing: { lengths: [2050] },
    made: [{ what: "shelf", product: "plank", lengths: [400, 500] }],
    threshold: [{ door: "D1", profile: "flat" }],
  }
  const all = allOf(roomPieces(joineryTask(written)))

  it("bear each a mark of its own", () => {
    expect(new Set(all.map((piece) => piece.mark)).size).toBe(all.length)
  })

  it("are counted in metres by product and use", () => {
    const quantities = joineryWork(joineryTask(written)).quantities
    const shelf = quantities.find((each) => each.what === "Fitted parts")
    expect(shelf).toMatchObject({
      product: "plank",
      net: 0.9,
      unit: "m",
      from: "2 pieces, cut to the saw sheet",
    })
    const metres = quantities.filter((each) => each.unit === "m").reduce((sum, each) => sum + each.net, 0)
    expect(metres).toBeCloseTo(all.reduce((sum, piece) => sum + piece.length, 0) / 1000, 9)
  })

  it("leave the saw when they are sawn, and stay on the sheet", () => {
    const work = joineryWork(joineryTask({ ...written, sawn: ["R1-H1", "R1-1-D1L"] }))
    expect(work.pieces).toHaveLength(all.length - 2)
    expect(work.pieces.map((piece) => piece.mark)).not.toContain("R1-H1")
    expect(work.results.sawn).toEqual(["R1-1-D1L", "R1-H1"])
    expect(work.findings).toEqual([])
  })
})
