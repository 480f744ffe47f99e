import { describe, expect, it } from "vitest"
import { doorInputs, doorsInputs, doorWork } from "../../../src/trades/doors/inputs.ts"

describe("what may be written for a door", () => {
  it("leaves a door as it hangs unless told", () => {
    expect(doorInputs.parse({})).toMatchObject({ hang: "stays", undercutFor: "none", smoke: false })
    expect(doorsInputs.parse({})).toEqual({})
  })

  it("takes furniture as true or as a product", () => {
    expect(doorInputs.parse({ closer: true, latch: "latch-76" })).toMatchObject({
      closer: true,
      latch: "latch-76",
    })
  })

  it("refuses unknown keys", () => {
    expect(doorInputs.safeParse({ hang: "new", leef: "x" }).success).toBe(false)
    expect(doorsInputs.safeParse({ door: 1 }).success).toBe(false)
  })

  it("counts what cannot be read as nothing written", () => {
    expect(doorWork({ hang: "perhaps" }).hang).toBe("stays")
  })

  it("explains every key", () => {
    for (const schema of [doorInputs, doorsInputs]) {
      for (const [key, each] of Object.entries(schema.shape))
        expect([key, typeof each.meta()?.description]).toEqual([key, "string"])
    }
  })
})
