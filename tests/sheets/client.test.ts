import { describe, expect, it } from "vitest"
import { instantAt } from "../../src/kernels/calendar/instant.ts"
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

  it("say each week what is done, in which rooms on how many days, and where nobody may walk", async () => {
    const [schedule] = await sheetsFor(null)
    const rows = cellsOf(schedule)
    // laid on Monday 1 and Tuesday 2, fixed and oiled on Wednesday 3 March
    expect(rows.map((cells) => cells[0])).toEqual(["Mon 1 Mar"])
    expect(rows[0]?.slice(1)).toEqual([
      "Floors: living room. Joinery: living room.",
      "living room 3",
      "nowhere",
    ])
  })

  it("say in the following week too where a floor is still wet", async () => {
    const result = await smallResult(() => ({ money: null }))
    const [first, ...others] = result.programme.steps
    const finish = instantAt("2027-03-05", "16:00", "Europe/London")
    const wet = {
      ...first!,
      start: instantAt("2027-03-05", "15:00", "Europe/London"),
      finish,
      ready: instantAt("2027-03-08", "10:00", "Europe/London"),
      step: { ...first!.step, gate: { process: "oil", hours: 66, forbids: ["walk" as const] } },
    }
    const programme = { ...result.programme, steps: [wet, ...others] }
    const [schedule] = clientSheets({ ...result, programme })
    const rows = cellsOf(schedule)
    expect(rows.map((cells) => cells[0])).toEqual(["Mon 1 Mar", "Mon 8 Mar"])
    for (const cells of rows) expect(cells[3]).toBe("living room, from Fri 5 Mar 16:00 until Mon 8 Mar 10:00")
    expect(rows[1]?.slice(1, 3)).toEqual(["", "none"])
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
