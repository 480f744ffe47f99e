import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterEach, beforeEach, expect, it } from "vitest"
import type { OfficeRow } from "../../src/press/office-list.ts"
import { setJob } from "../../src/press/set-job.ts"
import { rowOf, siteData } from "../../src/press/site-data.ts"
import { writeSite } from "../../src/press/write-site.ts"
import { smallResult } from "../fixtures/small-job.ts"

let staging = ""
beforeEach(() => {
  staging = mkdtempSync(join(tmpdir(), "storey-rod-site-"))
})
afterEach(() => rmSync(staging, { recursive: true, force: true }))

const list = () => readFileSync(join(staging, "print", "index.html"), "utf8")
const rows = (): OfficeRow[] => {
  const script = readFileSync(join(staging, "print", "jobs.js"), "utf8")
  return JSON.parse(script.replace(/^globalThis\.officeRows = /, ""))
}

it("writes the pages of a job, the papers to print, and the office's list", async () => {
  const job = setJob("tiny", await smallResult())
  await writeSite({ site: async () => siteData([job]), staging })
  for (const path of ["site/index.html", "site/7k3m9x2q/index.html", "press/print/tiny/job.html"])
    expect(existsSync(join(staging, path)), path).toBe(true)
  expect(rows()).toEqual([rowOf(job)])
  expect(list()).toContain('href="tiny/job.pdf"')
})

it("writes a list of other jobs where it is given one, and no job's pages", async () => {
  const other = { ...rowOf(setJob("tiny", await smallResult())), ref: "other", title: "<b>Other</b>" }
  await writeSite({ site: async () => siteData([], [other]), staging })
  expect(rows()).toEqual([other])
  expect(list()).toContain('<a href="other/job.pdf">&lt;b&gt;Other&lt;/b&gt;</a>')
  expect(existsSync(join(staging, "site", "index.html"))).toBe(true)
  expect(existsSync(join(staging, "press", "print"))).toBe(false)
})
