import type { PDFDict, PDFDocument } from "pdf-lib"
import { PDFName, PDFString } from "pdf-lib"

import { invariant } from "../../kernels/fault.ts"

/** An instant in UTC as PDF writes it, e.g. `D:20270208090000Z` (ISO 32000-1:2008, 7.9.4). */
export function pdfDate(instant: string): string {
  return `D:${wholeSeconds(instant).replace(/[-:T]/g, "")}`
}

/** An instant in UTC as XMP writes it, to the second, e.g. `2027-02-08T09:00:00Z` (ISO 16684-1). */
export function xmpDate(instant: string): string {
  return wholeSeconds(instant)
}

/** Replaces the dates the browser took from the clock by the document's own. */
export function fixDates(pdf: PDFDocument, information: PDFDict, instant: string): void {
  const date = PDFString.of(pdfDate(instant))
  information.set(PDFName.of("CreationDate"), date)
  information.set(PDFName.of("ModDate"), date)
  pdf.catalog.delete(PDFName.of("LastModified"))
}

function wholeSeconds(instant: string): string {
  const time = new Date(instant)
  invariant(!Number.isNaN(time.getTime()), `"${instant}" is no instant such as 2027-02-08T09:00:00Z`)
  return `${time.toISOString().slice(0, 19)}Z`
}
