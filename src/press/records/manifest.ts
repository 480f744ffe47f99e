import { createHash } from "node:crypto"
import type { SheetPage } from "../site-data.ts"
import { jsonText, plain } from "./plain.ts"

/** A file of the output: its path below the job's private folder or below the site, and its bytes. */
export interface WrittenFile {
  path: string
  bytes: Uint8Array
}

/** sha256 of bytes or text, as hexadecimal text. */
export function sha256(content: Uint8Array | string): string {
  return createHash("sha256").update(content).digest("hex")
}

/** What a reader of a sheet sees, as one figure: it changes when and only when something shown changes. */
export function contentHash(page: SheetPage): string {
  const { sheet, place, rests } = page
  return sha256(
    JSON.stringify(
      plain({
        title: sheet.title,
        purpose: sheet.purpose,
        datum: sheet.datum,
        blocks: sheet.blocks,
        place,
        rests,
      }),
    ),
  )
}

/** `manifest.json`: every file with bytes and sha256, every sheet with its content hash and address, and the browser that printed. */
export function manifestText(given: {
  ref: string
  revision: string
  browser: string | null
  files: readonly WrittenFile[]
  sheets: readonly { page: SheetPage; pages: number | null }[]
}): string {
  return jsonText({
    ref: given.ref,
    revision: given.revision,
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
      contentHash: contentHash(page),
      url: page.address,
    })),
  })
}
