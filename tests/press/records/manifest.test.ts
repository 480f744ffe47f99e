import { beforeAll, describe, expect, it } from "vitest"
import { manifestText } from "../../../src/press/records/manifest.ts"
import { sha256 } from "../../../src/press/revisions/fingerprint.ts"
import { type SetJob, setJob } from "../../../src/press/set-job.ts"
import { rowOf, type SheetPage, siteData } from "../../../src/press/site-data.ts"
import { smallResult } from "../../fixtures/small-job.ts"

let job: SetJob
let page: SheetPage
beforeAll(async () => {
  job = setJob("tiny", await smallResult())
  page = siteData([job]).hosted[0]!
})

describe("sha256", () => {
  it("gives the values of the published examples (FIPS 180-2, appendix B.1; and of nothing)", () => {
    expect(sha256("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")
    expect(sha256("")).toBe("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855")
    expect(sha256(new TextEncoder().encode("abc"))).toBe(sha256("abc"))
  })
})

describe("the manifest", () => {
  it("names files in order with bytes and sha256, and sheets with hash and address", () => {
    const files = ["b.csv", "a.csv"].map((path) => ({ path, bytes: new TextEncoder().encode("abc") }))
    const office = rowOf(job)
    const given = {
      ref: "tiny",
      code: "7k3m9x2q",
      revision: "0",
      office,
      madeOf: "a",
      findings: [],
      documents: [],
      measures: new Map(),
      browser: null,
      files,
      sheets: [{ page, pages: 2 }],
    }
    const { files: written, sheets, browser } = JSON.parse(manifestText(given))
    expect(browser).toBeNull()
    expect(written.map((file: { path: string }) => file.path)).toEqual(["a.csv", "b.csv"])
    expect(written[0]).toMatchObject({ bytes: 3, sha256: sha256("abc") })
    expect(sheets).toEqual([
      expect.objectContaining({
        id: page.sheet.number,
        pages: 2,
        contentHash: page.sheet.fingerprint.hash,
        url: page.address,
        hosted: true,
      }),
    ])
  })
})
