import { PDFDocument } from "pdf-lib"
import { accessClauses } from "./clauses-access.ts"
import { archiveClauses } from "./clauses-archive.ts"
import type { OpenPdf } from "./open.ts"
import { openPdf } from "./open.ts"

/** A document under inspection, as bytes and as two independent readers see it. */
export interface Inspected {
  bytes: Uint8Array
  pdf: PDFDocument
  open: OpenPdf
}

/** One requirement of a standard, and what in a document goes against it. */
export interface Clause {
  /** Standard and clause, e.g. `A 6.1.3`: A is ISO 19005-3:2012, UA is ISO 14289-1:2014; numbers from memory. */
  id: string
  what: string
  faults: (inspected: Inspected) => string[] | Promise<string[]>
}

/** Every clause that is asserted, archive first. */
export const clauses: readonly Clause[] = [...archiveClauses, ...accessClauses]

/**
 * What in a finished PDF goes against the clauses asserted here: `clause: what is wrong`, empty when nothing does.
 * No outside certification: these are the clauses our own tests can hold.
 */
export async function clauseFaults(bytes: Uint8Array): Promise<string[]> {
  const pdf = await PDFDocument.load(bytes, { updateMetadata: false })
  const inspected = { bytes, pdf, open: await openPdf(bytes) }
  const found: string[] = []
  for (const { id, faults } of clauses) {
    found.push(...(await faults(inspected)).map((fault) => `${id}: ${fault}`))
  }
  await inspected.open.loadingTask.destroy()
  return found
}
