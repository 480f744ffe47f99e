import { mkdirSync, writeFileSync } from "node:fs"
import { join } from "node:path"
import type { SheetMeasure } from "../measure.ts"
import { filesBelow } from "../output-tree.ts"
import type { PrintedDocument } from "../print-documents.ts"
import type { SetJob } from "../set-job.ts"
import { rowOf, type SheetPage } from "../site-data.ts"
import { manifestText } from "./manifest.ts"
import type { RecordFile } from "./record-files.ts"

/** Writes a job's records into its private folder. */
export function writeRecords(staging: string, ref: string, records: readonly RecordFile[]): void {
  const folder = join(staging, "print", ref)
  mkdirSync(folder, { recursive: true })
  for (const { name, text } of records) writeFileSync(join(folder, name), text)
}

/** What a manifest says beside what lies in the folders. */
export interface ManifestGiven {
  browser: string | null
  pages: readonly SheetPage[]
  printed: readonly PrintedDocument[]
  measures: ReadonlyMap<string, SheetMeasure>
  madeOf: string
  findings: readonly { severity: string; text: string }[]
}

/** Writes a job's manifest last, over every file of its private folder and of its part of the site. */
export function writeManifest(staging: string, job: SetJob, given: ManifestGiven): void {
  const code = job.result.job.code
  const below = (folder: string, prefix: string) =>
    filesBelow(join(staging, folder)).map(({ path, bytes }) => ({ path: `${prefix}${path}`, bytes }))
  const archive = given.printed.find((each) => each.document.path === `print/${job.ref}/archive`)
  const text = manifestText({
    ref: job.ref,
    code,
    revision: job.revision.letter,
    office: rowOf(job),
    browser: given.browser,
    madeOf: given.madeOf,
    measures: given.measures,
    findings: given.findings,
    documents: given.printed.flatMap(({ made }) => made ?? []),
    files: [...below(`print/${job.ref}`, ""), ...below(`site/${code}`, `site/${code}/`)],
    sheets: given.pages.map((page) => ({ page, pages: archive?.sheetPages.get(page.sheet.path) ?? null })),
  })
  writeFileSync(join(staging, "print", job.ref, "manifest.json"), text)
}
