import { describe, expect, it } from "vitest"
import { dryingRests } from "../../src/rulebook/drying.ts"
import { onPaper } from "../../src/trades/rests.ts"

describe("entries at the foot of a sheet", () => {
  it("leave out output rates", () => {
    expect(onPaper(["decor-waste", "decor-out-wall"])).toEqual(["decor-waste"])
  })

  it("of drying keep what gives hours", () => {
    expect(onPaper(dryingRests("skim"))).toEqual([
      "drying-skim-hours",
      "drying-skim-per-mm",
      "drying-doubling",
    ])
    expect(onPaper(dryingRests("sealant"))).toEqual(["drying-sealant-per-mm", "drying-doubling"])
  })
})
