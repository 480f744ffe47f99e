import { describe, expect, it } from "vitest"
import { formats } from "../../src/intake/formats.ts"
import { productsFile } from "../../src/intake/schema/products.ts"
import { smallTrades } from "./broken-jobs.ts"

describe("formats", () => {
  it("takes under work what the trades take, with their defaults", () => {
    const { house } = formats(smallTrades)
    const entry = {
      id: "D1",
      name: "door",
      between: ["outside", "G1"],
      lining: "keep",
      lengthsTo: "lining",
      heightsFrom: "deck",
      widths: [768],
      heights: [1994],
      wall: 131,
      work: {},
    }
    const storeys = [{ id: "g", name: "g", deck: 0, finishNow: 0, base: "timber" }]
    const rest = { lowestGround: 0, storeys, occupied: false, surveyed: { on: "2027-01-01", by: "foreman" } }
    expect(house.parse({ ...rest, doors: [entry] }).doors[0]?.work).toEqual({ hang: "stays" })
    expect(house.safeParse({ ...rest, doors: [{ ...entry, work: { hung: 1 } }] }).success).toBe(false)
  })

  it("takes any use of products where no trade names one", () => {
    expect(formats([]).products).toBe(productsFile)
  })
})
