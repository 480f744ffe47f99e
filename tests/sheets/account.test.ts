import { describe, expect, it } from "vitest"
import { variation } from "../../src/intake/schema/variations.ts"
import { variationsSheet } from "../../src/sheets/account.ts"
import type { JobResult } from "../../src/sheets/job-result.ts"
import { smallMoney, smallResult } from "../fixtures/small-job.ts"
import { tablesOf } from "./sheets.ts"

const omitted = variation.parse({
  id: "V1",
  on: "2027-02-01",
  asked: "client",
  what: "no skirting",
  accepted: "2027-02-02",
  rooms: [{ room: "C2", omit: ["joinery"] }],
})
const working = (result: JobResult) => [
  { number: "J-54", title: "Deliveries", blocks: result.orders.lines.map((line) => line.product.id) },
  { number: "C2-04", title: "Floor", blocks: ["the same"] },
  ...(result.orders.cutLists.length > 0 ? [{ number: "J-53", title: "Saw sheet", blocks: [] }] : []),
]

describe("the office's sheet of variations", () => {
  it("shows costs left out, the order that falls away, and which paper to change", async () => {
    const result = await smallResult(() => ({ money: smallMoney, variations: [omitted] }))
    const [sheet] = variationsSheet(result, working)
    const costs = tablesOf(sheet).find((table) => table.caption === "Costs that change")!
    // 5 h of the joiners at 31.17 = 155.85; 5 lengths of skirting at 21.60 = 108.00
    const of = (start: string) => costs.rows.find((row) => row.cells[0]?.startsWith(start))?.cells[1]
    expect(of("Omit: joiners")).toBe("−155.85")
    expect(of("Omit: skirting")).toBe(`−${result.account!.contract.orders.lines[1]!.total.toFixed(2)}`)
    const orders = tablesOf(sheet).find((table) => table.caption === "Orders that change")!
    expect(orders.rows.map((row) => row.cells[2])).toEqual(["none"])
    expect(JSON.stringify(sheet?.blocks)).toContain("Print again and take the old ones away (1): J-54")
    expect(JSON.stringify(sheet?.blocks)).toContain("Withdraw: J-53")
  })

  it("is for the office alone, and none where nothing varies", async () => {
    const result = await smallResult(() => ({ money: smallMoney, variations: [omitted] }))
    const [sheet] = variationsSheet(result, working)
    expect([sheet?.audience, sheet?.hosted]).toEqual([["office"], false])
    expect(variationsSheet(await smallResult(), working)).toEqual([])
  })
})
