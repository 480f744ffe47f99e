import { describe, expect, it } from "vitest"
import { clientSheets, listText } from "../../src/sheets/client.ts"
import { smallMoney, smallResult } from "../fixtures/small-job.ts"
import { cellsOf } from "./sheets.ts"

const sheetsFor = async (money: typeof smallMoney | null) =>
  clientSheets(await smallResult(() => ({ money })))

describe("the client's sheets", () => {
  it("are never published", async () => {
    const sheets = await sheetsFor(smallMoney)
    expect(sheets.map((sheet) => sheet.kind)).toEqual(["client-schedule", "client-choices", "client-price"])
    expect(sheets.every((sheet) => !sheet.hosted && !sheet.audience.includes("trade"))).toBe(true)
  })

  it("leave out price and choices where none are written", async () => {
    expect((await sheetsFor(null)).map((sheet) => sheet.kind)).toEqual(["client-schedule"])
    const none = { ...smallMoney, client: { decisions: [], notes: [] } }
    expect((await sheetsFor(none)).map((sheet) => sheet.kind)).toEqual(["client-schedule", "client-price"])
  })

  it("say each week what is done and which rooms are out of use", async () => {
    const [schedule] = await sheetsFor(null)
    const rows = cellsOf(schedule)
    expect(rows.map((cells) => cells[0])).toEqual(["Mon 1 Mar"])
    expect(rows[0]?.slice(1)).toEqual(["Floors: living room. Joinery: living room.", "living room"])
  })

  it("give a price whose lines add up to its totals", async () => {
    const price = (await sheetsFor(smallMoney)).find((sheet) => sheet.kind === "client-price")
    const pence = cellsOf(price).map(([, amount = ""]) => Number(amount.replace(/[£,.]/g, "")))
    const [works = 0, provisional = 0, net = 0, vat = 0, gross = 0] = pence
    expect(provisional).toBe(41733)
    expect(works + provisional).toBe(net)
    expect(net + vat).toBe(gross)
    expect(vat).toBe(Math.round(net / 5))
  })

  it("name each choice with its day and room to sign", async () => {
    const choices = (await sheetsFor(smallMoney)).find((sheet) => sheet.kind === "client-choices")
    expect(cellsOf(choices)).toEqual([["colour of the walls", "Fri 12 Mar 2027", "", ""]])
    expect(JSON.stringify(choices)).toContain("keep the stair clear")
  })
})

describe("words in a list", () => {
  it.each([
    [[], ""],
    [["a"], "a"],
    [["a", "b"], "a and b"],
    [["a", "b", "c"], "a, b and c"],
  ])("%j reads %j", (words, text) => {
    expect(listText(words)).toBe(text)
  })
})
