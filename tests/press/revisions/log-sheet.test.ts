import { describe, expect, it } from "vitest"
import { revisionLog } from "../../../src/press/revisions/log-sheet.ts"

const revision = (letter: string) => ({ letter, text: letter, on: "2027-02-01", by: "foreman" })
const record = (letter: string) => ({
  revision: letter,
  on: "2027-02-01",
  by: "foreman",
  reason: `reason ${letter}`,
  sheets: [],
})
const sheet = (number: string, letters: string[], now: string, gone = false) => ({
  number,
  title: `Sheet ${number}`,
  gone,
  history: {
    revision: revision(now),
    issued: letters.map((letter) => ({ revision: revision(letter), changed: ["Rows"] })),
    before: null,
  },
})

function rowsOf(caption: string, log: ReturnType<typeof revisionLog>): string[][] {
  const block = log.blocks.find((each) => each.kind === "table" && each.caption === caption)
  return block?.kind === "table" ? block.rows.map((row) => row.cells) : []
}

describe("the revision log", () => {
  const log = revisionLog(
    [record("A"), record("B")],
    [
      sheet("A1-01", ["A"], "A"),
      sheet("A1-02", ["A", "B"], "B"),
      sheet("A1-03", ["B"], "B"),
      sheet("A1-04", ["A"], "0"),
      sheet("A1-05", ["A"], "0", true),
    ],
    ["Joiners"],
  )

  it("lists every issue with its reason", () => {
    expect(rowsOf("Issues", log).map((cells) => [cells[0], cells[3]])).toEqual([
      ["A", "reason A"],
      ["B", "reason B"],
    ])
  })

  it("lists what to withdraw and what to issue: changed, new, changed since, taken out; not what stays", () => {
    expect(rowsOf("Withdraw and issue", log).map((cells) => cells.slice(0, 2))).toEqual([
      ["A1-02 A", "A1-02 B"],
      ["nothing", "A1-03 B"],
      ["A1-04 A", "A1-04 draft"],
      ["A1-05 A", "nothing"],
    ])
  })

  it("has a line for everyone who holds paper", () => {
    expect(rowsOf("Who holds which revision", log).map((cells) => cells[0])).toEqual([
      "Foreman",
      "Joiners",
      "Client",
      "Office",
    ])
  })

  it("says so where nothing is to be exchanged", () => {
    const quiet = revisionLog([record("A"), record("B")], [sheet("A1-01", ["A"], "A")], [])
    expect(JSON.stringify(quiet.blocks)).toContain("Nothing is to be exchanged")
  })
})
