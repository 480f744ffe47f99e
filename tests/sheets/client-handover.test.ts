import { describe, expect, it } from "vitest"
import { handoverSheet } from "../../src/sheets/client-handover.ts"
import { leafProduct } from "../fixtures/products.ts"
import { smallResult } from "../fixtures/small-job.ts"

describe("what to check at handover", () => {
  it("goes through the trades that worked, and no other", async () => {
    const captions = handoverSheet(await smallResult()).blocks.flatMap((block) =>
      block.kind === "checks" ? [block.caption] : [],
    )
    expect(captions).toEqual(["Floors", "Skirting and trim", "Papers and things you are given"])
  })

  it("looks for the label only on doors that hold back fire", async () => {
    const result = await smallResult()
    const doors = {
      ...result.results[0]!,
      trade: "doors",
      work: { ...result.results.find((each) => each.work.steps.length > 0)!.work },
    }
    const withDoors = { ...result, results: [...result.results, doors] }
    const [line] = result.orders.lines
    const fire = { ...withDoors, orders: { ...result.orders, lines: [{ ...line!, product: leafProduct }] } }
    expect(JSON.stringify(handoverSheet(withDoors))).not.toContain("hold back fire")
    expect(JSON.stringify(handoverSheet(fire))).toContain("hold back fire")
  })
})
