import { describe, expect, it } from "vitest"
import { issueRecord, letterRank, nextLetter } from "../../../src/press/revisions/record.ts"

describe("revision letters", () => {
  it("run A to Z, then AA", () => {
    expect(nextLetter(undefined)).toBe("A")
    expect(nextLetter("A")).toBe("B")
    expect(nextLetter("Z")).toBe("AA")
    expect(nextLetter("AZ")).toBe("BA")
  })

  it("keep their order past Z", () => {
    let letter: string | undefined
    let last = 0
    for (let count = 0; count < 60; count++) {
      letter = nextLetter(letter)
      expect(letterRank(letter)).toBe(last + 1)
      last = letterRank(letter)
    }
  })
})

describe("an issue record", () => {
  const record = {
    revision: "A",
    on: "2027-03-01",
    by: "foreman",
    reason: "first",
    sheets: [{ number: "A1-01", title: "Room", hash: "0".repeat(64) }],
  }

  it("is taken as written", () => expect(issueRecord.parse(record)).toEqual(record))

  it.each([
    ["a small letter", { ...record, revision: "a" }],
    ["a hash cut short", { ...record, sheets: [{ ...record.sheets[0], hash: "0" }] }],
    ["a key that is none of ours", { ...record, extra: 1 }],
  ])("is refused with %s", (_, wrong) => expect(issueRecord.safeParse(wrong).success).toBe(false))
})
