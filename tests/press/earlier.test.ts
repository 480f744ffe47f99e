import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { copyHeld, earlierManifest } from "../../src/press/earlier.ts"
import { writeManifest, writeRecords } from "../../src/press/records/write-records.ts"
import { setJob } from "../../src/press/set-job.ts"
import { smallResult } from "../fixtures/small-job.ts"

let folder = ""
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "storey-rod-earlier-"))
  const job = setJob("tiny", await smallResult())
  writeRecords(folder, "tiny", [{ name: "job.json", text: "{}", mime: "application/json" }])
  mkdirSync(join(folder, "site", "7k3m9x2q"), { recursive: true })
  writeFileSync(join(folder, "site", "7k3m9x2q", "index.html"), "<p>")
  writeManifest(folder, job, {
    browser: "b/1",
    pages: [],
    printed: [],
    measures: new Map(),
    madeOf: "all",
    findings: [],
  })
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

const manifest = () => earlierManifest(folder, "tiny")!

describe("what the last build left", () => {
  it("is read from the job's manifest", () => {
    expect(manifest()).toMatchObject({ ref: "tiny", code: "7k3m9x2q", browser: "b/1", madeOf: "all" })
    expect(manifest().office.ref).toBe("tiny")
  })

  it("is nothing where there is no manifest, or one of another form", () => {
    expect(earlierManifest(folder, "other")).toBeNull()
    for (const text of ["{", "[]", JSON.stringify({ ref: "tiny" })]) {
      writeFileSync(join(folder, "print", "tiny", "manifest.json"), text)
      expect(earlierManifest(folder, "tiny"), text).toBeNull()
    }
  })

  it("is copied, each file held against its sum", () => {
    const to = join(folder, "next")
    expect(copyHeld(manifest(), { from: folder, to })).toBe(true)
    expect(readFileSync(join(to, "print/tiny/job.json"), "utf8")).toBe("{}")
    expect(readFileSync(join(to, "site/7k3m9x2q/index.html"), "utf8")).toBe("<p>")
  })

  it("is not taken where a file was altered, is missing, or was never there", () => {
    const to = join(folder, "next")
    const taken = (name: string) =>
      copyHeld(manifest(), { from: folder, to, only: (place) => place === name })
    expect(taken("print/tiny/job.json")).toBe(true)
    expect(taken("print/tiny/none.pdf")).toBe(false)
    writeFileSync(join(folder, "print/tiny/job.json"), "[]")
    expect(taken("print/tiny/job.json")).toBe(false)
    rmSync(join(folder, "site/7k3m9x2q/index.html"))
    expect(taken("site/7k3m9x2q/index.html")).toBe(false)
    expect(existsSync(join(to, "site/7k3m9x2q/index.html"))).toBe(false)
  })
})
