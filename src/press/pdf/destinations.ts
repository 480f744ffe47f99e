import type { PDFDocument } from "pdf-lib"
import { PDFArray, PDFDict, PDFName, PDFRef } from "pdf-lib"

/**
 * Where each linked place of a printed document stands: id of the element to the number of its page, from 1.
 * The browser writes one destination for every id that a link in the document points to, and for no other.
 */
export function destinationsOf(pdf: PDFDocument): Map<string, number> {
  const places = pdf.catalog.lookupMaybe(PDFName.of("Dests"), PDFDict)
  const pageNumbers = new Map(pdf.getPages().map((page, index) => [page.ref, index + 1]))
  const found = new Map<string, number>()
  for (const [name, value] of places?.entries() ?? []) {
    const target = pdf.context.lookup(value)
    const page = target instanceof PDFArray ? target.get(0) : undefined
    const number = page instanceof PDFRef ? pageNumbers.get(page) : undefined
    if (number !== undefined) found.set(name.decodeText(), number)
  }
  return found
}
