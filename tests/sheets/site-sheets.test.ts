import { describe, expect, it } from "vitest"
import { siteSheets } from "../../src/sheets/site-sheets.ts"
import { house } from "./site.ts"

describe("sheets of the site", () => {
  it("an occupied house with a new storey has all of them, an empty one only what trades and books need", () => {
    const kinds = (of: typeof house) => [...new Set(siteSheets(of).map(({ kind }) => kind))]
    expect(kinds(house)).toEqual([
      "end-of-day",
      "evenings",
      "first-night",
      "doors-below",
      "heat-before-wood",
      "trade-handover",
      "protection",
      "daywork",
      "diary",
    ])
    const empty = {
      ...house,
      house: { ...house.house, occupied: false },
      programme: { ...house.programme, firstNight: null },
    }
    expect(kinds(empty)).toEqual(["heat-before-wood", "trade-handover", "protection", "daywork", "diary"])
  })
})
