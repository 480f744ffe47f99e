import { describe, expect, it } from "vitest"
import { carryNote, longestSide, massesOf } from "../../src/orders/mass.ts"
import { packsFor } from "../../src/orders/packs.ts"
import { boardProduct, eachProduct, leafProduct, lengthProduct, liquidProduct } from "../fixtures/products.ts"
import { jobFacts, rulesOf } from "../fixtures/rooms.ts"

const job = jobFacts({})
const rules = rulesOf()

describe("mass", () => {
  it("is the packs' own where the product states it", () => {
    expect(massesOf(boardProduct, packsFor(boardProduct, 5).packs, rules)).toEqual({
      packMass: 24.4,
      mass: 48.8,
    })
    expect(massesOf(leafProduct, packsFor(leafProduct, 3).packs, rules)).toEqual({ packMass: 40, mass: 120 })
  })

  it("of paint goes by the litre, by the largest tin for one", () => {
    // 12.5 l and more: 10 l and 2.5 l at 1.5 kg/l
    expect(massesOf(liquidProduct, packsFor(liquidProduct, 12.4).packs, rules)).toEqual({
      packMass: 15,
      mass: 18.75,
    })
  })

  it("of lengths goes by size and timber: 32 x 132 x 4,200 softwood at 500 kg/m3 is 8.87 kg", () => {
    const pack = {
      size: "4,200 length",
      count: 2,
      price: packsFor(eachProduct, 1).packs[0]!.price,
      length: 4200,
    }
    const { packMass, mass } = massesOf(lengthProduct, [pack], rules)
    expect(packMass).toBeCloseTo(8.8704, 9)
    expect(mass).toBeCloseTo(17.7408, 9)
  })

  it("is not known where the product says nothing, never nought", () => {
    expect(massesOf(eachProduct, packsFor(eachProduct, 1).packs, rules)).toEqual({
      packMass: null,
      mass: null,
    })
  })
})

describe("the stair", () => {
  it("takes up to the longest and the heaviest that were given", () => {
    expect(carryNote(3300, 25, job)).toBeNull()
    expect(carryNote(3301, null, job)).toBe("3,301 long: cut below, or to no more than 3,300")
    expect(carryNote(0, 25.04, job)).toBe("25 kg: two people")
    expect([longestSide(lengthProduct), longestSide(leafProduct), longestSide(eachProduct)]).toEqual([
      4200, 1981, 0,
    ])
  })
})
