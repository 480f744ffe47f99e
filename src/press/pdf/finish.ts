import { PDFDocument } from "pdf-lib"

/** A file carried inside a PDF. */
export interface Attachment {
  /** File name, with `/` between folders. */
  name: string
  bytes: Uint8Array
  /** Media type, e.g. `application/yaml`. */
  mime: string
  /** What it is to the document: what it was made from, or data that belongs to it. */
  relationship: "Source" | "Data" | "Supplement"
  /** One line for the reader. */
  description: string
}

/** The label of a run of pages, as a reader shows it. */
export interface PageLabel {
  /** First page of the run, from 1. */
  page: number
  /** Text before the number, e.g. `A1-`. */
  prefix: string
  /** How its pages are numbered; `none` shows the prefix alone. */
  style: "decimal" | "roman" | "none"
  /** Number of its first page. */
  first: number
}

/** What a finished document says of itself. */
export interface FinishOptions {
  title: string
  /** BCP 47 tag, e.g. `en-GB`. */
  language: string
  /** Instant the document was issued, e.g. `2027-02-08T09:00:00Z`; never the clock. */
  created: string
  /** Names this document for good: job, pack and revision. The file identifier is made from it. */
  documentKey: string
  attachments: readonly Attachment[]
  pageLabels: readonly PageLabel[]
}

/** A finished PDF: the same bytes for the same print and options, always. */
export async function finishPdf(raw: Uint8Array, options: FinishOptions): Promise<Uint8Array> {
  const pdf = await PDFDocument.load(raw, { updateMetadata: false })
  pdf.setTitle(options.title)
  pdf.setCreationDate(new Date(options.created))
  pdf.setModificationDate(new Date(options.created))
  return pdf.save()
}
