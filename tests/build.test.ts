import { describe, expect, it } from "vitest"
import { stops, workOut } from "../src/build.ts"
import { noWork, type Trade } from "../src/trades/trade.ts"
import { smallJob, smallMoney, smallResult, tradesThatDoLittle } from "./fixtures/small-job.ts"

describe("a job worked out", () => {
  it("has each trade's work in each room that has it, in the order of rooms and trades", async () => {
    const { results, trades } = await smallResult()
    expect(results.map(({ trade, room }) => [trade, room?.id])).toEqual([
      ["floors", "C1"],
      ["floors", "C2"],
      ["joinery", "C2"],
    ])
    expect(trades.map((trade) => trade.id)).toEqual(["floors", "doors", "joinery"])
  })

  it("passes what one trade decides of a room on to the others", async () => {
    const { results, passed } = await smallResult()
    expect(passed.get("C2")).toEqual({ floorBuildUp: 19 })
    expect(results.find((each) => each.trade === "joinery")?.work.results).toEqual({ floorUnder: 19 })
  })

  it("dates the steps, saws the pieces, orders and prices, each from the one before", async () => {
    const { programme, orders, price } = await smallResult(() => ({ money: smallMoney }))
    expect(programme.steps.map(({ step }) => step.title)).toEqual(["Lay", "Fix", "Oil"])
    expect(orders.cutLists.flatMap((list) => list.plan.bars.flatMap((bar) => bar.pieces)).sort()).toEqual(
      orders.cutLists.flatMap((list) => list.pieces.map((piece) => piece.mark)).sort(),
    )
    expect(orders.lines.map((line) => line.product.id)).toEqual(["oak-14", "skirting-145"])
    expect(price?.labour.map(({ hours, amount }) => [hours, amount.toFixed(2)])).toEqual([[15, "467.55"]])
    expect((await smallResult(() => ({ money: null }))).price).toBeNull()
  })

  it("is the same each time and leaves what was read as it was", async () => {
    const job = smallJob()
    const before = structuredClone({
      ...job,
      products: [...job.products],
      chosen: [...job.chosen],
      works: null,
    })
    const first = await workOut(job, tradesThatDoLittle)
    const second = await workOut(job, tradesThatDoLittle)
    expect(JSON.stringify(second)).toBe(JSON.stringify(first))
    expect({ ...job, products: [...job.products], chosen: [...job.chosen], works: null }).toEqual(before)
  })

  it("takes overrides into every calculation, and refuses those beyond a floor", async () => {
    const override = { id: "saw-kerf", value: 4, reason: "wider blade" }
    const { rules } = await smallResult((job) => ({ job: { ...job.job, overrides: [override] } }))
    expect(rules.value("saw-kerf")).toBe(4)
    const wrong = { id: "lift-one-person", value: 40, reason: "strong" }
    const { findings } = await smallResult((job) => ({ job: { ...job.job, overrides: [wrong] } }))
    expect(findings.map((finding) => finding.code)).toContain("override-below-safety-floor")
    expect(stops(findings)).toBe(true)
  })

  it("gathers the findings of every stage", async () => {
    const { findings } = await smallResult((job) => ({ programme: { ...job.programme, crews: [] } }))
    expect(findings.filter((finding) => finding.code === "trade-without-crew")).toHaveLength(2)
    expect(stops(findings)).toBe(true)
    expect(stops((await smallResult()).findings)).toBe(false)
  })

  it("uses lengths in hand", async () => {
    const { orders } = await smallResult(() => ({ inHand: [{ product: "skirting-145", amount: 4300 }] }))
    expect(orders.cutLists[0]?.plan.bars.filter((bar) => bar.inHand).map((bar) => bar.length)).toEqual([4300])
  })

  it("asks a trade once for what it does across the job, where any room has it", async () => {
    const calls: string[][] = []
    const whole = (trade: Trade): Trade => ({
      ...trade,
      across: async (_, rooms) => {
        calls.push(rooms.map(({ room }) => room.id))
        return { work: noWork(), sheets: [] }
      },
    })
    const { results } = await workOut(smallJob(), tradesThatDoLittle.map(whole))
    expect(calls).toEqual([["C1", "C2"], ["C2"]])
    expect(results.filter((each) => each.room === null).map((each) => each.trade)).toEqual([
      "floors",
      "joinery",
    ])
  })
})
