import { describe, expect, it } from "vitest"
import { aftercareOf, aftercareSheet } from "../../src/sheets/client-aftercare.ts"
import { smallResult } from "../fixtures/small-job.ts"
import { cellsOf } from "./sheets.ts"

describe("aftercare for the client", () => {
  it("names what was used and the day it is due, and rests on the entries that say so", async () => {
    const result = await smallResult()
    const sheet = aftercareSheet(result)
    // finished on Wednesday 3 March 2027; twelve months later
    expect(cellsOf(sheet).map((cells) => cells.slice(0, 3))).toEqual([
      ["Fri 3 Mar 2028", "–", "Look at the new floor after its first year"],
    ])
    expect(cellsOf(sheet)[0]?.[3]).toContain("oak board 14")
    expect(sheet?.rests).toEqual(["aftercare-floor-look", "aftercare-years"])
    expect(JSON.stringify(sheet)).toContain("between 35 and 60 % humidity")
    expect(aftercareOf(result)).toHaveLength(1)
  })

  it("is no sheet where nothing asks for care", async () => {
    const result = await smallResult()
    expect(aftercareSheet({ ...result, orders: { ...result.orders, lines: [] } })).toBeNull()
  })
})
