import { describe, expect, it } from "vitest"
import { choicesSheet } from "../../src/sheets/client-choices.ts"
import { smallMoney, smallResult } from "../fixtures/small-job.ts"
import { cellsOf } from "./sheets.ts"

const sheetWith = async (client: Partial<typeof smallMoney.client>) =>
  choicesSheet(
    await smallResult(() => ({ money: { ...smallMoney, client: { ...smallMoney.client, ...client } } })),
  )

describe("choices", () => {
  it("stand in order of their day, each with what to look at, and room to write and sign", async () => {
    const [sheet] = await sheetWith({
      decisions: [
        { by: "2027-03-12", what: "Colour of the walls" },
        { by: "2027-02-10", what: "Board", product: "oak-14", sample: "two boards" },
      ],
    })
    expect(cellsOf(sheet)).toEqual([
      ["Wed 10 Feb 2027", "Board. It is ordered by Tue 16 Feb 2027.", "two boards", "", ""],
      ["Fri 12 Mar 2027", "Colour of the walls.", "ask us for a sample", "", ""],
    ])
    expect(JSON.stringify(sheet)).toContain("keep the stair clear")
  })

  it("are no sheet where there is nothing to choose and to note", async () => {
    expect(await sheetWith({ decisions: [], notes: [] })).toEqual([])
  })
})
