import { mkdirSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import { filesBelow } from "../output-tree.ts"
import type { PrintedDocument } from "../print-documents.ts"
import type { SetJob } from "../set-job.ts"
import type { SheetPage } from "../site-data.ts"
import { calendarFile } from "./calendar-file.ts"
import { csvFiles } from "./csv.ts"
import { jobJson } from "./job-json.ts"
import { manifestText } from "./manifest.ts"

/** A record of a job: a file of its private folder. */
export interface RecordFile {
  name: string
  text: string
  mime: string
}

/** The machine-readable files of a job, all but the manifest. */
export function recordFiles(job: SetJob): RecordFile[] {
  return [
    { name: "job.json", text: jobJson(job), mime: "application/json" },
    ...csvFiles(job).map((file) => ({ ...file, mime: "text/csv" })),
    { name: "programme.ics", text: calendarFile(job), mime: "text/calendar" },
  ]
}

/** Writes a job's records into its private folder. */
export function writeRecords(staging: string, ref: string, records: readonly RecordFile[]): void {
  const folder = join(staging, "print", ref)
  mkdirSync(folder, { recursive: true })
  for (const { name, text } of records) writeFileSync(join(folder, name), text)
}

/** Writes a job's manifest last, over every file of its private folder and of its part of the site. */
export function writeManifest(
  staging: string,
  job: SetJob,
  given: { browser: string | null; pages: readonly SheetPage[]; printed: readonly PrintedDocument[] },
): void {
  const code = job.result.job.code
  const below = (folder: string, prefix: string) =>
    filesBelow(join(staging, folder)).map(({ path, bytes }) => ({ path: `${prefix}${path}`, bytes }))
  const archive = given.printed.find((each) => each.document.path === `print/${job.ref}/archive`)
  const text = manifestText({
    ref: job.ref,
    revision: job.revision.letter,
    browser: given.browser,
    files: [...below(`print/${job.ref}`, ""), ...below(`site/${code}`, `site/${code}/`)],
    sheets: given.pages.map((page) => ({ page, pages: archive?.sheetPages.get(page.sheet.path) ?? null })),
  })
  writeFileSync(join(staging, "print", job.ref, "manifest.json"), text)
}
