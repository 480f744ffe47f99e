import { decodePDFRawStream, PDFDocument, PDFName, PDFRawStream } from "pdf-lib"

/**
 * The colours set in a document that are not a shade of grey, e.g. `0 0 .9333`, each once.
 * Looks at every content stream: pages, forms and patterns.
 */
export async function coloursNotGrey(bytes: Uint8Array): Promise<string[]> {
  const pdf = await PDFDocument.load(bytes, { updateMetadata: false })
  const pageContents = new Set(pdf.getPages().map((page) => page.node.get(PDFName.of("Contents"))))
  const found = new Set<string>()
  for (const [ref, object] of pdf.context.enumerateIndirectObjects()) {
    if (!(object instanceof PDFRawStream)) continue
    const isForm = object.dict.lookup(PDFName.of("Subtype")) === PDFName.of("Form")
    const isPattern = object.dict.has(PDFName.of("PatternType"))
    if (!pageContents.has(ref) && !isForm && !isPattern) continue
    const content = Buffer.from(decodePDFRawStream(object).decode()).toString("latin1")
    for (const [, colour] of content.matchAll(/([\d.]+ [\d.]+ [\d.]+) (?:rg|RG)\b/g)) {
      const [red, green, blue] = (colour ?? "").split(" ")
      if (red !== green || green !== blue) found.add(colour ?? "")
    }
  }
  return [...found].sort()
}
