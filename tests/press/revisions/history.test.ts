import { describe, expect, it } from "vitest"
import type { Block } from "../../../src/kernels/paper.ts"
import { type Fingerprint, rowHash } from "../../../src/press/revisions/fingerprint.ts"
import {
  changedParts,
  inOrderOfIssue,
  sheetHistory,
  withChangeMarks,
} from "../../../src/press/revisions/history.ts"
import type { IssueRecord } from "../../../src/press/revisions/record.ts"

const draft = { letter: "0", text: "draft, not issued", on: "2027-01-01", by: "foreman" }
const hash = (digit: string) => digit.repeat(64)
const part = (name: string, digit: string) => ({ name, hash: digit.repeat(12) })

function record(revision: string, on: string, digit: string): IssueRecord {
  return {
    revision,
    on,
    by: "foreman",
    reason: "a reason",
    sheets: [
      { number: "A1-01", title: "Room", hash: hash(digit), parts: [part("Sizes", digit), part("Plan", "9")] },
    ],
  }
}

function now(digit: string): Fingerprint {
  return {
    number: "A1-01",
    title: "Room",
    hash: hash(digit),
    parts: [part("Sizes", digit), part("Plan", "9")],
  }
}

const issues = [
  record("A", "2027-02-01", "1"),
  record("B", "2027-03-01", "1"),
  record("C", "2027-04-01", "2"),
]

describe("a sheet's history", () => {
  it("is a draft before the first issue", () => {
    expect(sheetHistory([], "A1-01", { now: now("1"), draft }).revision).toEqual(draft)
  })

  it("keeps the letter it last changed with: paper A is still current after issue B", () => {
    const history = sheetHistory(issues.slice(0, 2), "A1-01", { now: now("1"), draft })
    expect(history.revision).toMatchObject({ letter: "A", on: "2027-02-01" })
    expect(history.issued.map((each) => each.revision.letter)).toEqual(["A"])
  })

  it("takes the letter of the issue that changed it, and says what changed", () => {
    const history = sheetHistory(issues, "A1-01", { now: now("2"), draft })
    expect(history.revision.letter).toBe("C")
    expect(history.issued.map((each) => [each.revision.letter, each.changed])).toEqual([
      ["A", []],
      ["C", ["Sizes"]],
    ])
  })

  it("is a draft again when it changed since the last issue", () => {
    expect(sheetHistory(issues, "A1-01", { now: now("3"), draft }).revision).toMatchObject({
      letter: "0",
      text: "draft, changed since C",
    })
  })

  it("puts records in the order of their letters", () => {
    const many = ["AA", "B", "Z", "A"].map((letter) => record(letter, "2027-02-01", "1"))
    expect(inOrderOfIssue(many).map((each) => each.revision)).toEqual(["A", "B", "Z", "AA"])
  })

  it("names parts that were taken out", () => {
    expect(changedParts([part("Sizes", "1"), part("Hidden", "2")], [part("Sizes", "1")])).toEqual([
      "Hidden (taken out)",
    ])
  })
})

describe("change marks", () => {
  const table: Block = {
    kind: "table",
    caption: "Steps",
    columns: [{ label: "What" }],
    rows: [{ cells: ["one"] }, { cells: ["two"] }],
  }

  it("mark the rows that the last revision did not have", () => {
    const before = [{ name: "Steps", hash: "0".repeat(12), rows: [rowHash(["one"])] }]
    const [marked] = withChangeMarks([table], before)
    expect(marked).toMatchObject({ rows: [{ cells: ["one"] }, { cells: ["two"], changed: true }] })
    expect(marked).not.toMatchObject({ rows: [{ changed: true }] })
  })

  it("mark nothing on a sheet that is new", () => expect(withChangeMarks([table], null)).toEqual([table]))
})
