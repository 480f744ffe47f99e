import { describe, expect, it } from "vitest"
import { floorInputs } from "../../../src/trades/floors/inputs.ts"

describe("what may be written for a floor", () => {
  it("a finish alone is enough", () => {
    expect(floorInputs.parse({ finish: "floating-board" })).toEqual({
      finish: "floating-board",
      stays: "carpet",
      into: [],
      breaks: [],
      heldAlong: [],
      joints: "locked",
      oilCoats: 1,
      deckScrews: true,
    })
  })

  it.each([
    {},
    { finish: "laminate" },
    { finish: "floating-board", gap: -3 },
    { finish: "floating-board", along: 0 },
    { finish: "floating-board", oilCoats: 9 },
    { finish: "floating-board", gaps: 10 },
  ])("%j is refused", (written) => {
    expect(floorInputs.safeParse(written).success).toBe(false)
  })

  it("every key is described for the editor", () => {
    for (const [key, schema] of Object.entries(floorInputs.shape)) {
      expect(schema.meta()?.description?.length ?? 0, key).toBeGreaterThan(10)
    }
  })
})
