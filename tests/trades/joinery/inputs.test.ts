import { describe, expect, it } from "vitest"
import { joineryInputs, stairsWritten } from "../../../src/trades/joinery/inputs.ts"

describe("what may be written for joinery", () => {
  it("may be nothing", () => {
    expect(joineryInputs.parse({})).toMatchObject({ without: [], trims: [], made: [], stairs: [], sawn: [] })
  })

  it.each([
    { what: "a key that is not known", written: { skirtings: "a" } },
    { what: "a trim on two sides", written: { trims: [{ opening: "RW1", sides: 2 }] } },
    { what: "a length in metres as text", written: { nosing: { lengths: ["2.05 m"] } } },
    {
      what: "a part that is none of a stair",
      written: { stairs: [{ stair: "S2", parts: [{ what: "banister", product: "p", lengths: [900] }] }] },
    },
  ])("refuses $what", ({ written }) => {
    expect(joineryInputs.safeParse(written).success).toBe(false)
  })

  it("comes back from a room's results", () => {
    const { stairs } = joineryInputs.parse({ stairs: [{ stair: "S2", onTreads: 12 }] })
    expect(stairsWritten(stairs)).toEqual(stairs)
    expect(stairsWritten(undefined)).toEqual([])
  })
})
