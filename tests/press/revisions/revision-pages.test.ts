import { describe, expect, it } from "vitest"
import { issuedSheet } from "../../../src/press/revisions/record.ts"
import { revisionPages } from "../../../src/press/revisions/revision-pages.ts"
import { type SetJob, setJob } from "../../../src/press/set-job.ts"
import { smallResult } from "../../fixtures/small-job.ts"

const result = await smallResult()
const first = setJob("tiny", result)

function record(revision: string, on: string, change: (number: string) => string = () => "") {
  return {
    revision,
    on,
    by: "foreman",
    reason: "a reason",
    sheets: first.sheets.map(({ number, fingerprint }) =>
      issuedSheet.parse({
        number,
        title: fingerprint.title,
        hash: `${change(number)}${fingerprint.hash}`.slice(0, 64),
        parts: fingerprint.parts,
      }),
    ),
  }
}

const room = first.sheets.find((sheet) => sheet.kind === "glance")!.number

function paper(job: SetJob, number: string, letter: string) {
  const page = revisionPages(job).find((each) => each.number === number && each.letter === letter)
  if (!page) throw new Error(`no page for ${number} ${letter}`)
  return page
}

describe("what the QR of a paper opens", () => {
  it("says of a draft that nothing has been issued yet", () => {
    expect(paper(first, room, "0")).toMatchObject({ isCurrent: true, since: [] })
  })

  it("says current for old paper of an unchanged sheet, and out of date where it changed", () => {
    const issues = [
      record("A", "2027-02-01", (number) => (number === room ? "0" : "")),
      record("B", "2027-03-01"),
    ]
    const job = setJob("tiny", result, issues)
    const other = first.sheets.find((sheet) => sheet.number !== room)!.number
    expect(paper(job, other, "A")).toMatchObject({ isCurrent: true })
    expect(paper(job, other, "A").verdict).toContain("It is current.")
    const old = paper(job, room, "A")
    expect(old).toMatchObject({ isCurrent: false })
    expect(old.verdict).toContain("Current is B, since Mon 1 Mar 2027")
    expect(old.since.map((each) => each.letter)).toEqual(["B"])
  })

  it("tells the holder of a draft not to build from it once there is an issue", () => {
    expect(paper(setJob("tiny", result, [record("A", "2027-02-01")]), room, "0").verdict).toContain(
      "Do not build from it",
    )
  })

  it("never says current of a sheet that changed since its issue", () => {
    const job = setJob("tiny", result, [record("A", "2027-02-01", (number) => (number === room ? "0" : ""))])
    expect(paper(job, room, "A")).toMatchObject({ isCurrent: false })
  })

  it("keeps the page of a sheet that left the job", () => {
    const issue = record("A", "2027-02-01")
    const gone = issuedSheet.parse({ number: "Z9-01", title: "Gone", hash: "1".repeat(64), parts: [] })
    const job = setJob("tiny", result, [{ ...issue, sheets: [...issue.sheets, gone] }])
    expect(paper(job, "Z9-01", "A").verdict).toContain("taken out of the job")
  })

  it("says no title of a sheet that is not published", () => {
    for (const page of revisionPages(first)) if (!page.hosted) expect(page.title).toBe("")
  })
})
