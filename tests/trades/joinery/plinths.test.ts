import { describe, expect, it } from "vitest"
import {
  outToPlinths,
  plinthPieces,
  plinthQuantity,
  plinthSize,
} from "../../../src/trades/joinery/plinths.ts"
import { roomPieces } from "../../../src/trades/joinery/work.ts"
import { joineryTask, moulding } from "./task.ts"

const set = { door: "D1", wall: 1, inside: { width: 768, height: 1994 }, outerFrom: 424, outerTo: 1344 }

describe("plinth blocks", () => {
  const { job } = joineryTask()
  const size = plinthSize({ width: 145 }, { width: 69 }, job.rules)

  it("stand out beside the architrave and over the skirting", () => {
    expect(size).toEqual({ width: 75, height: 160 })
    expect(outToPlinths([set], size, { width: 69 })).toMatchObject([{ outerFrom: 418, outerTo: 1350 }])
  })

  it("are two a doorway, as pieces where a product is chosen, else counted", () => {
    expect(plinthPieces([set], { room: "R1", product: undefined, height: 160 })).toEqual([])
    const pieces = plinthPieces([set], { room: "R1", product: "block", height: 160 })
    expect(pieces.map((piece) => [piece.mark, piece.length])).toEqual([
      ["R1-1-D1PL", 160],
      ["R1-1-D1PR", 160],
    ])
    expect(plinthQuantity("R1", 2, size)).toMatchObject({ product: null, gross: 4, unit: "nr" })
  })

  it("shorten the legs that stand on them and stop the skirting", () => {
    const block = moulding({ id: "block", width: 75, thickness: 25 })
    const plain = roomPieces(joineryTask())
    const task = joineryTask(
      { plinths: true },
      {
        chosen: { plinth: "block" },
        products: [moulding({ id: "skirting" }), moulding({ id: "architrave", width: 69 }), block],
      },
    )
    const cut = roomPieces(task)
    expect(cut.plinths).toHaveLength(4)
    expect(cut.architraves[0]!.length).toBe(plain.architraves[0]!.length - 160)
    expect(cut.skirtings[0]!.length).toBe(plain.skirtings[0]!.length - 6)
  })
})
