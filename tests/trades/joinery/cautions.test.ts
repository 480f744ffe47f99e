import { describe, expect, it } from "vitest"
import { joineryCautions } from "../../../src/trades/joinery/cautions.ts"

const ids = (...given: Parameters<typeof joineryCautions>) => joineryCautions(...given).map((each) => each.id)

describe("cautions of joinery", () => {
  it("name the dust of what is sawn", () => {
    expect(ids([{ material: "mdf", primed: true }], { adhesive: false })[0]).toBe("mdf-dust")
    expect(ids([{ material: "hardwood", primed: false }], { adhesive: false })[0]).toBe("hardwood-dust")
    expect(ids([{ material: "metal", primed: false }], { adhesive: false })).toEqual([
      "mitre-saw",
      "nailer",
      "scan-walls",
    ])
  })

  it("name the adhesive where one is used, and nothing where nothing is done", () => {
    expect(ids([], { adhesive: true })).toEqual(["grab-adhesive"])
    expect(ids([], { adhesive: false })).toEqual([])
  })

  it("say why, and to whom they defer", () => {
    for (const caution of joineryCautions([{ material: "mdf", primed: true }], { adhesive: true })) {
      expect(caution.why).toBeTruthy()
      expect(caution.defer).toBeTruthy()
    }
  })
})
