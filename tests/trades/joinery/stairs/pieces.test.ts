import { describe, expect, it } from "vitest"
import { stairPieces } from "../../../../src/trades/joinery/stairs/pieces.ts"
import { joineryTask } from "../task.ts"

describe("parts of a stair", () => {
  it("are marked by stair and part, numbered by part", () => {
    const { job, input } = joineryTask({
      stairs: [
        {
          stair: "S2",
          parts: [
            { what: "string", product: "plank", lengths: [3900] },
            { what: "tread", product: "plank", lengths: [790, 790] },
            { what: "newel", product: "not-there", lengths: [1100] },
          ],
        },
      ],
    })
    expect(
      stairPieces(input.stairs, "R1", job).map((piece) => [piece.mark, piece.what, piece.length]),
    ).toEqual([
      ["R1-S2-S1", "string, stair S2", 3900],
      ["R1-S2-T1", "tread, stair S2", 790],
      ["R1-S2-T2", "tread, stair S2", 790],
    ])
  })
})
