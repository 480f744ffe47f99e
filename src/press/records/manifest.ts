import type { MadeDocument } from "../earlier.ts"
import type { SheetMeasure } from "../measure.ts"
import type { OfficeRow } from "../office-list.ts"
import { sha256 } from "../revisions/fingerprint.ts"
import type { SheetPage } from "../site-data.ts"
import { jsonText } from "./plain.ts"

/** A file of the output: its path below the job's private folder or below the site, and its bytes. */
export interface WrittenFile {
  path: string
  bytes: Uint8Array
}

/** `manifest.json`: every file with bytes and sha256, every sheet with its content hash and address, and the browser that printed. */
export function manifestText(given: {
  ref: string
  code: string
  revision: string
  office: OfficeRow
  /** Hash of all that went into the job, and what was found in it: an unchanged job is not worked out again. */
  madeOf: string
  findings: readonly { severity: string; text: string }[]
  documents: readonly MadeDocument[]
  measures: ReadonlyMap<string, SheetMeasure>
  browser: string | null
  files: readonly WrittenFile[]
  sheets: readonly { page: SheetPage; pages: number | null }[]
}): string {
  return jsonText({
    ref: given.ref,
    code: given.code,
    revision: given.revision,
    office: given.office,
    madeOf: given.madeOf,
    findings: given.findings,
    documents: given.documents,
    measures: given.measures,
    browser: given.browser,
    files: given.files
      .map((file) => ({ path: file.path, bytes: file.bytes.length, sha256: sha256(file.bytes) }))
      .sort((a, b) => (a.path < b.path ? -1 : 1)),
    sheets: given.sheets.map(({ page, pages }) => ({
      id: page.sheet.number,
      title: page.sheet.title,
      pages,
      audience: page.sheet.audience,
      hosted: page.sheet.hosted,
      contentHash: page.sheet.fingerprint.hash,
      revision: page.revision.letter,
      url: page.address,
    })),
  })
}
