import { describe, expect, it } from "vitest"
import { dayText } from "../../src/kernels/calendar/date-text.ts"
import { bySupplier, deliveriesSheet, packsText } from "../../src/sheets/deliveries.ts"
import { leafProduct } from "../fixtures/products.ts"
import { smallResult } from "../fixtures/small-job.ts"
import { cellsOf, tablesOf } from "./sheets.ts"

describe("deliveries", () => {
  it("are a table a drop, with packs to count, where to put them, what to read, and the last day to order", async () => {
    const result = await smallResult((job) => ({
      stores: [{ place: "the shed", takes: ["board" as const] }],
      suppliers: job.suppliers,
    }))
    const sheet = deliveriesSheet(result)
    // The floor is laid from Monday 1 March, so boards come on Friday 26 February; ten days back is Tuesday 16 February.
    expect(tablesOf(sheet).map((table) => table.caption)).toEqual([
      "Fri 26 Feb 2027, from the flooring merchant: order by Tue 16 Feb 2027; about 171 kg",
      "Tue 2 Mar 2027, from the timber merchant: order by Fri 26 Feb 2027; about 43 kg",
      "At the end: count what is over; whole unopened packs go back while the supplier takes them",
    ])
    expect(cellsOf(sheet)[0]).toEqual([
      "oak board 14 (needed Mon 1 Mar)",
      "7 × pack of 8 (19.69 m²)",
      "the shed",
      "",
      "",
      "moisture ___ %",
    ])
  })

  it("say what does not go up the stair, first of all", async () => {
    const [stair] = deliveriesSheet(await smallResult())!.blocks
    expect(JSON.stringify(stair)).toContain(
      "skirting 18 x 145: 4,400 long: cut below, or to no more than 3,300",
    )
  })

  it("ask for the label of a fire-resisting leaf, and say why a thing must not come sooner", async () => {
    const result = await smallResult()
    const [line] = result.orders.lines
    const drops = [
      {
        ...result.deliveries.drops[0]!,
        lines: [{ ...line!, product: leafProduct, notBefore: "plaster dry" }],
      },
    ]
    const [cells] = cellsOf(deliveriesSheet({ ...result, deliveries: { ...result.deliveries, drops } }))
    expect(cells?.[0]).toContain(`not before ${dayText(line!.earliest)}: plaster dry`)
    expect(cells?.[5]).toBe("label 30 minutes seen ___")
  })

  it("leave what is collected to its own list", async () => {
    const result = await smallResult()
    const drops = result.deliveries.drops.map((drop) => ({ ...drop, collect: true }))
    const sheet = deliveriesSheet({ ...result, deliveries: { ...result.deliveries, drops } })
    expect(tablesOf(sheet)).toHaveLength(1)
  })

  it("carry no price", async () => {
    const result = await smallResult()
    const words = JSON.stringify(deliveriesSheet(result))
    for (const line of result.orders.lines) expect(words).not.toContain(line.total.toFixed(2))
    expect(words).not.toContain("£")
  })

  it("are no sheet at all where nothing is bought", async () => {
    const result = await smallResult()
    expect(deliveriesSheet({ ...result, deliveries: { ...result.deliveries, drops: [] } })).toBeNull()
  })

  it("keep lines of one supplier together, whatever their order", async () => {
    const { orders } = await smallResult()
    const [a, b] = orders.lines
    const groups = bySupplier([a!, b!, a!]).map(({ supplier, lines }) => [supplier, lines.length])
    expect(groups).toEqual([
      ["flooring merchant", 2],
      ["timber merchant", 1],
    ])
  })

  it("write packs of several sizes as one sum", async () => {
    const { orders } = await smallResult()
    const [line] = orders.lines
    const price = line!.total
    const packs = [
      { size: "5 l tin", count: 2, price },
      { size: "2.5 l tin", count: 1, price },
    ]
    expect(packsText({ ...line!, packs })).toBe("2 × 5 l tin + 1 × 2.5 l tin")
  })
})
