import { describe, expect, it } from "vitest"
import { revisionAddress, revisionOf } from "../../src/press/addresses.ts"
import { smallJob } from "../fixtures/small-job.ts"

const { job } = smallJob()

describe("the address on a sheet's paper", () => {
  it("is host, job code, sheet and revision, in small letters, with a stroke at the end", () => {
    const revision = { ...revisionOf(job), letter: "B" }
    expect(revisionAddress(job, { path: "a1-04" }, revision)).toBe("https://packs.example/7k3m9x2q/a1-04/b/")
  })

  it("fits a QR of version 4 at level M: 62 bytes at most (ISO/IEC 18004:2015, table 7)", () => {
    const longest = revisionAddress(job, { path: "j-58-electrician" }, { ...revisionOf(job), letter: "AA" })
    expect(Buffer.byteLength(longest)).toBeLessThanOrEqual(62)
  })
})

describe("paper that was never issued", () => {
  it("says so, and carries the day and the role that prepared it", () => {
    expect(revisionOf(job)).toEqual({
      letter: "0",
      text: "draft, not issued",
      on: "2027-02-15",
      by: "the office",
    })
  })
})
