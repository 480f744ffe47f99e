import type { PDFDocumentProxy } from "pdfjs-dist/legacy/build/pdf.mjs"
import { getDocument, VerbosityLevel } from "pdfjs-dist/legacy/build/pdf.mjs"

/** A PDF opened for reading by pdf.js, a reader independent of what wrote it. Its bytes are copied, so they stay usable. */
export type OpenPdf = PDFDocumentProxy

/** Opens a PDF from its bytes. */
export async function openPdf(bytes: Uint8Array): Promise<OpenPdf> {
  return getDocument({
    data: Uint8Array.from(bytes),
    verbosity: VerbosityLevel.ERRORS,
    useSystemFonts: false,
    disableFontFace: true,
  }).promise
}
