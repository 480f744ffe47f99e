import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { runInNewContext } from "node:vm"
import { afterAll, describe, expect, it } from "vitest"
import { sha256 } from "../../../src/press/revisions/fingerprint.ts"
import { type KeptCopy, keptCopy, writeKeptCopy } from "../../../src/press/site/kept-copy.ts"

const staging = mkdtempSync(join(tmpdir(), "storey-rod-kept-"))
afterAll(() => rmSync(staging, { recursive: true, force: true }))
const job = { code: "7k3m9x2q", zone: "Europe/London", letters: { "a1-02": "B" } }
const page = (path: string, text: string) => ({ path, bytes: new TextEncoder().encode(text) })

describe("what a phone keeps of a job", () => {
  it("is each page by its folder, with the beginning of its sum, and the site's assets", () => {
    const { files } = keptCopy(job, [page("index.html", "hub"), page("a1-02/index.html", "sheet")])
    expect(files.slice(0, 2)).toEqual([
      ["./", sha256("hub").slice(0, 16)],
      ["a1-02/", sha256("sheet").slice(0, 16)],
    ])
    expect(files.slice(2).every(([path]) => path.startsWith("../assets/"))).toBe(true)
  })

  it("has another name when any page changes, and the same when none does", () => {
    const hash = (text: string) => keptCopy(job, [page("index.html", text)]).hash
    expect(hash("one")).toBe(hash("one"))
    expect(hash("one")).not.toBe(hash("two"))
  })

  it("is written into the worker of the job and told in copy.json; PDFs are left out", () => {
    const folder = join(staging, "site", job.code)
    mkdirSync(folder, { recursive: true })
    writeFileSync(join(folder, "index.html"), "hub")
    writeFileSync(join(folder, "sheet.pdf"), "pdf")
    writeKeptCopy(staging, job)
    const worker = readFileSync(join(folder, "worker.js"), "utf8")
    const told = runInNewContext(`${worker.split("\n")[0]}; job`) as KeptCopy
    expect(told.files.filter(([path]) => !path.startsWith("../"))).toEqual([
      ["./", sha256("hub").slice(0, 16)],
    ])
    expect(JSON.parse(readFileSync(join(folder, "copy.json"), "utf8"))).toEqual({
      hash: told.hash,
      sheets: { "a1-02": "B" },
    })
  })
})
