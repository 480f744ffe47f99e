import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, describe, expect, it } from "vitest"
import { recordFiles } from "../../../src/press/records/record-files.ts"
import { writeManifest, writeRecords } from "../../../src/press/records/write-records.ts"
import { sha256 } from "../../../src/press/revisions/fingerprint.ts"
import { setJob } from "../../../src/press/set-job.ts"
import { smallResult } from "../../fixtures/small-job.ts"

const folder = mkdtempSync(join(tmpdir(), "storey-rod-records-"))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe("the records of a job", () => {
  it("are written under their names, byte for byte", async () => {
    const files = recordFiles(setJob("tiny", await smallResult()))
    writeRecords(folder, "tiny", files)
    expect(files.map((file) => file.name)).toEqual([
      "job.json",
      "orders.csv",
      "cut-list.csv",
      "door-schedule.csv",
      "programme.csv",
      "programme.ics",
      "aftercare.ics",
    ])
    for (const { name, text } of files)
      expect(readFileSync(join(folder, "print", "tiny", name), "utf8"), name).toBe(text)
  })

  it("end in a manifest over every private file and the job's part of the site, without itself", async () => {
    const job = setJob("tiny", await smallResult())
    writeRecords(folder, "tiny", [{ name: "job.json", text: "{}", mime: "application/json" }])
    mkdirSync(join(folder, "site", "7k3m9x2q"), { recursive: true })
    mkdirSync(join(folder, "site", "other123"), { recursive: true })
    writeFileSync(join(folder, "site", "7k3m9x2q", "index.html"), "<p>")
    writeFileSync(join(folder, "site", "other123", "index.html"), "<p>")
    writeManifest(folder, job, {
      browser: null,
      pages: [],
      printed: [],
      measures: new Map(),
      madeOf: "a",
      findings: [],
    })
    const { files } = JSON.parse(readFileSync(join(folder, "print", "tiny", "manifest.json"), "utf8"))
    const paths = files.map((file: { path: string }) => file.path)
    expect(paths).toContain("job.json")
    expect(paths).toContain("site/7k3m9x2q/index.html")
    expect(paths.filter((path: string) => /manifest|other/.test(path))).toEqual([])
    expect(files.find((file: { path: string }) => file.path === "job.json")).toMatchObject({
      bytes: 2,
      sha256: sha256("{}"),
    })
  })
})
