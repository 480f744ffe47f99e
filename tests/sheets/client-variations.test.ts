import { describe, expect, it } from "vitest"
import { variation } from "../../src/intake/schema/variations.ts"
import { clientVariationsSheet, standing } from "../../src/sheets/client-variations.ts"
import { smallMoney, smallResult } from "../fixtures/small-job.ts"
import { tablesOf } from "./sheets.ts"

const change = (given: Record<string, unknown>) =>
  variation.parse({ id: "V1", on: "2027-02-01", asked: "client", what: "shelf", ...given })
const shelf = (given: Record<string, unknown>) =>
  change({ sums: [{ what: "shelf", amount: "100.00" }], ...given })

describe("the running account", () => {
  it("goes from the agreed price over each change to the price now, by hand: 100.00 and 20.00 VAT", async () => {
    const variations = [
      shelf({ accepted: "2027-02-03" }),
      shelf({ id: "V2" }),
      shelf({ id: "V3", declined: "2027-02-03" }),
    ]
    const result = await smallResult(() => ({ money: smallMoney, variations }))
    const [sheet] = clientVariationsSheet(result)
    const [account, first, open] = tablesOf(sheet)
    const rows = account!.rows.map((row) => row.cells)
    expect(rows.slice(1, 4).map((cells) => cells.slice(1, 4))).toEqual([
      ["+100.00", "+20.00", "+120.00"],
      ["(+100.00)", "(+20.00)", "(+120.00)"],
      ["–", "–", "–"],
    ])
    const pence = (text = "") => Math.round(Number(text.replace(",", "")) * 100)
    expect(pence(rows[4]?.[3]) - pence(rows[0]?.[3])).toBe(12000)
    expect(first?.rows.map((row) => row.cells[1])).toEqual(["100.00", "0.00", "20.00", "120.00"])
    expect(open?.note).toContain("The finish stays")
    expect(account?.note).toContain("not counted")
  })

  it("says of each how it stands, and leaves room for the next", async () => {
    expect(
      [shelf({}), shelf({ accepted: "2027-02-03" }), shelf({ declined: "2027-02-03" })].map((each) =>
        standing({ variation: each }),
      ),
    ).toEqual([
      "open: not part of the job until signed",
      "accepted Wed 3 Feb 2027",
      "declined Wed 3 Feb 2027",
    ])
    const [sheet] = clientVariationsSheet(await smallResult(() => ({ money: smallMoney })))
    expect(sheet?.blocks.map((block) => block.kind)).toContain("boxes")
    expect(clientVariationsSheet(await smallResult(() => ({ money: null })))).toEqual([])
  })
})
