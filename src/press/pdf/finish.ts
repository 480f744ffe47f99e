import { ParseSpeeds, PDFDocument, PDFHeader } from "pdf-lib"

import { markArtifacts } from "./artifacts.ts"
import type { Attachment } from "./attachments.ts"
import { attach } from "./attachments.ts"
import { addOutputIntent } from "./colour.ts"
import { renumberElementIds, renumberObjects, setFileIdentifier } from "./ids.ts"
import { describeLinks } from "./links.ts"
import type { Description } from "./metadata.ts"
import { describe } from "./metadata.ts"
import type { PageLabel } from "./page-labels.ts"
import { labelPages } from "./page-labels.ts"
import { mendStructure } from "./structure.ts"

/** What a finished document is to be. */
export interface FinishOptions extends Description {
  /** Names this document for good: job, pack and revision. The file identifier is made from it. */
  documentKey: string
  attachments: readonly Attachment[]
  pageLabels: readonly PageLabel[]
}

/**
 * Finishes what the browser printed: built to PDF/A-3a and PDF/UA-1, with its attachments, and the same bytes for the same
 * print and options, whatever the browser had printed before and whatever the clock says.
 * @throws Fault where the print is not as a browser writes it, so that nothing is mended by guess
 */
export async function finishPdf(raw: Uint8Array, options: FinishOptions): Promise<Uint8Array> {
  const pdf = await PDFDocument.load(raw, { updateMetadata: false, parseSpeed: ParseSpeeds.Fastest })
  markArtifacts(pdf)
  mendStructure(pdf)
  describeLinks(pdf)
  renumberElementIds(pdf)
  addOutputIntent(pdf)
  labelPages(pdf, options.pageLabels)
  attach(pdf, options.attachments, options.created)
  describe(pdf, options)
  setFileIdentifier(pdf, options.documentKey)
  renumberObjects(pdf)
  pdf.context.header = PDFHeader.forVersion(1, 7)
  return pdf.save({
    useObjectStreams: true,
    addDefaultPage: false,
    updateFieldAppearances: false,
    objectsPerTick: Number.POSITIVE_INFINITY,
  })
}
