import { describe, expect, it } from "vitest"
import { aftercare } from "../../src/orders/aftercare.ts"
import type { OrderLine } from "../../src/orders/orders.ts"
import { boardProduct, leafProduct, liquidProduct } from "../fixtures/products.ts"
import { datedOf, stepOf } from "../fixtures/programme.ts"
import { rulesOf, surveyed } from "../fixtures/rooms.ts"
import { smallResult } from "../fixtures/small-job.ts"

const programme = datedOf(
  [
    stepOf({
      key: "oil",
      trade: "floors",
      stage: "oil",
      gate: { process: "oil", hours: 24, forbids: ["walk"] },
    }),
    stepOf({ key: "last", stage: "snag" }),
  ],
  [surveyed()],
)

async function caresOf(products: OrderLine["product"][]) {
  const [line] = (await smallResult()).orders.lines
  return aftercare({ lines: products.map((product) => ({ ...line!, product })), programme, rules: rulesOf() })
}

describe("aftercare", () => {
  it("dates what an oiled floor asks for by hand: oil of Mon 1 March dry on the 2nd, rugs 14 days after, oil each 12 months", async () => {
    const oil = { ...liquidProduct, use: "oil" as const, name: "Floor oil, test" }
    const cares = await caresOf([boardProduct, oil])
    const due = new Map(cares.map((care) => [care.id, care.due]))
    expect(programme.finish).toBe("2027-03-02")
    expect(due.get("rugs")).toEqual(["2027-03-16"])
    expect(due.get("floor-gaps")).toEqual(["2028-03-02"])
    expect(due.get("oil")).toEqual(["2028-03-02", "2029-03-02", "2030-03-02", "2031-03-02", "2032-03-02"])
    expect(due.get("oil-whole")).toEqual(["2030-03-02"])
    expect(cares.find((care) => care.id === "oil")?.how).toContain("Floor oil, test")
  })

  it("asks only for what was used, in order of the first day due", async () => {
    expect((await caresOf([leafProduct])).map((care) => care.id)).toEqual(["doors"])
    expect((await caresOf([liquidProduct])).map((care) => [care.id, care.often])).toEqual([
      ["repaint", "every 5 years"],
    ])
    expect(await caresOf([{ ...leafProduct, fire: "none" }])).toEqual([])
    const all = await caresOf([leafProduct, boardProduct, liquidProduct])
    expect(all.map((care) => care.due[0])).toEqual(all.map((care) => care.due[0]).sort())
  })
})
