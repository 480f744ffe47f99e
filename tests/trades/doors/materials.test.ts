import { describe, expect, it } from "vitest"
import { loud, run, setDoor } from "./run.ts"

describe("what one door takes", () => {
  const made = setDoor("D1", {
    lining: "new",
    lengthsTo: "stud",
    heightsFrom: "deck",
    widths: [844, 844, 844],
    heights: [2051, 2051, 2051],
  })

  // 844 = 6 + 32 + 3 + 762 + 3 + 32 + 6. Height over the oak: 2,051 - 19 = 2,032; 2,032 - 32 - (5 to 10) leaves 1,990 to 1,995
  // for 1,981 + 3 + 8 = 1,992: packing 8. Legs stand on the deck: 1,992 + 19 of floor.
  it("cuts lining and stop for 762 x 1981 in 844 x 2051 over the deck with 19 of floor", () => {
    const { works } = run({ D1: { hang: "new" } }, made)
    const { pieces, quantities, findings } = works.get("A1")!
    expect(loud(findings.map((finding) => finding.code))).toEqual([])
    expect(pieces.map((piece) => [piece.mark, piece.product, piece.length])).toEqual([
      ["A1-D1-L1", "lining-108", 2011],
      ["A1-D1-L2", "lining-108", 2011],
      ["A1-D1-L3", "lining-108", 832],
      ["A1-D1-T1", "stop-12", 768],
      ["A1-D1-T2", "stop-12", 1980],
      ["A1-D1-T3", "stop-12", 1980],
    ])
    expect(quantities.map((each) => [each.what, each.gross, each.unit])).toEqual([
      ["Door leaf 762 x 1981 x 44", 1, "nr"],
      ["Lining set", 1, "nr"],
      ["Hinge 100 mm, grade 11", 3, "nr"],
      ["Hinge screw", 24, "nr"],
      ["Latch with keep", 1, "nr"],
      ["Handles, pair", 1, "nr"],
      ["Intumescent strip", 4.452, "m"],
    ])
  })
})
