import type { PDFDocument } from "pdf-lib"
import { PDFArray, PDFDict, PDFHexString, PDFName, PDFNumber, PDFString } from "pdf-lib"

import { destinationsOf } from "./destinations.ts"

/** Bit 3 of an annotation's flags: it is printed (ISO 32000-1:2008, table 165). */
const printFlag = 4

/**
 * Gives each link its words for readers who cannot see it, and the flag that it prints
 * (ISO 14289-1:2014, 7.18.1 and 7.18.5).
 */
export function describeLinks(pdf: PDFDocument): void {
  const places = destinationsOf(pdf)
  for (const page of pdf.getPages()) {
    const annotations = page.node.Annots()
    for (let index = 0; index < (annotations?.size() ?? 0); index += 1) {
      const annotation = annotations?.lookup(index)
      if (!(annotation instanceof PDFDict)) continue
      if (annotation.lookupMaybe(PDFName.of("Subtype"), PDFName) !== PDFName.of("Link")) continue
      annotation.set(PDFName.of("Contents"), PDFHexString.fromText(wordsFor(annotation, places)))
      const flags = annotation.lookupMaybe(PDFName.of("F"), PDFNumber)?.asNumber() ?? 0
      annotation.set(PDFName.of("F"), pdf.context.obj(flags | printFlag))
    }
  }
}

function wordsFor(link: PDFDict, places: ReadonlyMap<string, number>): string {
  const address = link.lookupMaybe(PDFName.of("A"), PDFDict)?.lookup(PDFName.of("URI"))
  if (address instanceof PDFString || address instanceof PDFHexString) return `Open ${address.decodeText()}`
  const target = link.lookup(PDFName.of("Dest"))
  const page = target instanceof PDFName ? places.get(target.decodeText()) : undefined
  return page === undefined || target instanceof PDFArray ? "Go to its page" : `Go to page ${page}`
}
