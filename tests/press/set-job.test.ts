import { describe, expect, it } from "vitest"
import { issuedSheet } from "../../src/press/revisions/record.ts"
import { setJob } from "../../src/press/set-job.ts"
import { smallResult } from "../fixtures/small-job.ts"

const result = await smallResult()
const draft = setJob("tiny", result)
const record = (revision: string, on: string) => ({
  revision,
  on,
  by: "foreman",
  reason: "a reason",
  sheets: draft.sheets.map(({ fingerprint: { number, title, hash, parts } }) =>
    issuedSheet.parse({ number, title, hash, parts }),
  ),
})

describe("a job's sheets as they are set", () => {
  it("carry the day of preparation and no letter before the first issue", () => {
    expect(draft.revision).toMatchObject({ letter: "0", on: result.job.prepared.on })
    expect(draft.sheets.every((sheet) => sheet.revision.letter === "0")).toBe(true)
    expect(draft.sheets.map((sheet) => sheet.kind)).not.toContain("revision-log")
  })

  it("carry the day of their issue afterwards, and a revision log", () => {
    const job = setJob("tiny", result, [record("A", "2027-02-11")])
    expect(job.revision).toMatchObject({ letter: "A", on: "2027-02-11" })
    expect(new Set(job.sheets.map((sheet) => `${sheet.revision.letter} ${sheet.revision.on}`))).toEqual(
      new Set(["A 2027-02-11"]),
    )
    expect(job.sheets.at(-1)).toMatchObject({ kind: "revision-log", hosted: false })
    expect(job.packs.map((pack) => pack.id)).not.toContain("reprint")
  })

  it("have a pack of what changed only from the second issue on", () => {
    const job = setJob("tiny", result, [record("B", "2027-03-01"), record("A", "2027-02-11")])
    expect(job.packs.find((pack) => pack.id === "reprint")?.sheets.map((sheet) => sheet.kind)).toEqual([
      "revision-log",
    ])
  })

  it("are numbered once each", () => {
    expect(new Set(draft.sheets.map((sheet) => sheet.path)).size).toBe(draft.sheets.length)
  })
})
