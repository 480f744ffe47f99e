import { describe, expect, it } from "vitest"
import type { SheetModel } from "../../src/kernels/paper.ts"
import { orderChanges, priceChange } from "../../src/orders/change.ts"
import { allSheets } from "../../src/sheets/all-sheets.ts"
import { textOf, wordsHeading } from "../../src/sheets/client-sheet.ts"
import { tradeWords } from "../facts/trade-words.ts"
import { lockHouse } from "../fixtures/demo.ts"

const { result } = lockHouse
const sheets = allSheets(result)

/** Words of a sheet without what only tells the press how to set it. */
const wordsOf = (sheet: Pick<SheetModel, "title" | "purpose" | "blocks">) =>
  textOf([sheet.title, sheet.purpose, ...sheet.blocks])
const sheetOf = (kind: string) => sheets.find((sheet) => sheet.kind === kind)!

describe("the variation that the demo's client accepted: a radiator on the attic landing", () => {
  const accepted = () => result.account!.changes[0]!

  it("is part of the job: one radiator, its collars, the plumber's hours", () => {
    const { before, after } = accepted()
    expect(
      orderChanges(before.orders.lines, after!.orders.lines).map(({ line, was, now }) => [
        line.product.id,
        was,
        now,
      ]),
    ).toEqual(
      expect.arrayContaining([
        ["radiator-1000", 2, 3],
        ["pipe-collar-15", 4, 6],
      ]),
    )
    expect(result.orders.lines.find((line) => line.product.id === "radiator-1000")?.bought).toBe(3)
    expect(result.programme.steps.some(({ step }) => step.key === "plumbing/A4/radiators")).toBe(true)
    expect(before.programme.steps.some(({ step }) => step.key === "plumbing/A4/radiators")).toBe(false)
  })

  it("costs what its goods and hours come to, worked by hand", () => {
    const { before, after } = accepted()
    const change = priceChange(before.price!, after!.price!)
    const of = (what: string) => change.costs.find((each) => each.what.startsWith(what))?.cost.toFixed(2)
    // one more radiator at 88.00; two collars at 1.20
    expect(of("Radiator")).toBe("88.00")
    expect(of("Pipe collar")).toBe("2.40")
    const cost = change.costs.reduce((sum, each) => sum + Number(each.cost), 0)
    // 18 % overhead and profit and 5 % contingency on the difference, to a penny for the rounding of each whole
    expect(Math.abs(Number(change.net) - cost * 1.23)).toBeLessThanOrEqual(0.02)
    expect(Math.abs(Number(change.vat) - Number(change.net) * 0.2)).toBeLessThanOrEqual(0.01)
    expect(before.price!.gross.plus(change.gross).equals(result.price!.gross)).toBe(true)
  })

  it("dates the finish anew and says so to client and office", () => {
    const { before, after } = accepted()
    for (const kind of ["client-variations", "variations"]) {
      const words = wordsOf(sheetOf(kind))
      expect(words).toContain(after!.programme.finish === before.programme.finish ? "stays" : "anew")
    }
  })

  it("lists the paper to print again: every sheet of the landing that speaks of plumbing, and the deliveries", () => {
    const words = wordsOf(sheetOf("variations"))
    expect(words).toMatch(/Print again and take the old ones away \(\d+\): .*A4-02/)
    expect(words).toMatch(/J-54/)
    expect(words).toMatch(/New: .*A4-11/)
  })

  it("leaves the open and the declined change out of every figure", () => {
    const [, open, declined] = result.account!.changes
    expect([open!.variation.accepted, declined!.after]).toEqual([undefined, null])
    expect(result.results.some((each) => each.trade === "decorating" && each.room?.id === "A5")).toBe(true)
    expect(wordsOf(sheetOf("client-variations"))).toContain("open: not part of the job until signed")
  })
})

describe("the demo's orders", () => {
  it("are never short, and any pack less would be (spare lengths apart)", () => {
    for (const line of result.orders.lines) {
      const list = result.orders.cutLists.find((each) => each.product.id === line.product.id)
      if (list) {
        const bars = list.plan.bars.filter((bar) => !bar.inHand).length
        const spares = list.spares?.count ?? 0
        expect(list.plan.unplaced).toEqual([])
        expect(list.plan.proven).toBe(true)
        expect(line.packs.reduce((sum, pack) => sum + pack.count, 0)).toBe(bars + spares)
        continue
      }
      const held = line.packs.reduce((sum, pack) => sum + pack.count * pack.holds!, 0)
      expect(held, line.product.id).toBeGreaterThanOrEqual(line.gross * (1 - 1e-9))
      for (const pack of line.packs) expect(held - pack.holds!, line.product.id).toBeLessThan(line.gross)
    }
  })

  it("come before they are needed, on working days, and are ordered early enough", () => {
    for (const line of result.orders.lines) {
      expect(line.comesOn <= line.neededOn).toBe(true)
      expect(line.comesOn >= line.earliest, line.product.id).toBe(true)
      expect(line.orderBy <= line.comesOn).toBe(true)
    }
  })

  it("bring the oak only when every room it is for is warm, on the day it is carried in", () => {
    const oak = result.orders.lines.find((line) => line.product.kind === "board")!
    const first = result.programme.steps.find(({ step }) => step.stage === "acclimatise")!
    expect(oak).toMatchObject({ straightIn: true, notBefore: "heating on and steady" })
    expect(oak.comesOn).toBe(new Date(first.start).toISOString().slice(0, 10))
  })
})

describe("the client's pack", () => {
  const pack = () => sheets.filter((sheet) => sheet.audience.includes("client"))

  it("answers what a client asks: weeks, rooms, choices, agreement, price, payments, changes, handover, aftercare", () => {
    expect(pack().map((sheet) => sheet.kind)).toEqual(
      expect.arrayContaining([
        "client-cover",
        "client-schedule",
        "client-rooms",
        "client-choices",
        "client-terms",
        "client-price",
        "client-payments",
        "client-variations",
        "client-handover",
        "handover-record",
        "client-aftercare",
      ]),
    )
  })

  it("explains every word of the trade on the sheet it stands on", () => {
    const unexplained = pack().flatMap((sheet) => {
      const words = sheet.blocks.findIndex((block) => block.kind === "heading" && block.text === wordsHeading)
      const own = wordsOf({ ...sheet, blocks: words < 0 ? sheet.blocks : sheet.blocks.slice(0, words) })
      const explained = words < 0 ? "" : textOf(sheet.blocks.slice(words))
      return tradeWords
        .filter((word) => word.test(own) && !word.test(explained) && !plainlySaid(own, word))
        .map((word) => `${sheet.number}: ${word.exec(own)?.[0]}`)
    })
    expect(unexplained).toEqual([])
  })

  /** True where the word's meaning stands right beside it: in brackets or after "is a". */
  function plainlySaid(text: string, word: RegExp): boolean {
    return new RegExp(`${word.source}(?: is a| \\()|\\((?:[^)]* )?${word.source}`, "i").test(text)
  }

  it("shows no rate of pay, no share of profit, no price of goods", () => {
    const words = pack().map(wordsOf).join("\n")
    for (const { perHour } of result.moneyFile!.rates) expect(words).not.toContain(perHour)
    for (const secret of ["verhead", "profit", "contingency"]) expect(words).not.toContain(secret)
    const goods = result.orders.lines.filter((line) => Number(line.total) > 20)
    for (const line of goods) expect(words, line.product.id).not.toContain(line.total.toFixed(2))
  })
})
