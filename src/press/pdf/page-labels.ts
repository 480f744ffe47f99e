import type { PDFDict, PDFDocument } from "pdf-lib"
import { PDFHexString, PDFName } from "pdf-lib"

/** The label of a run of pages, as a reader shows it. */
export interface PageLabel {
  /** First page of the run, from 1; the run ends where the next begins. */
  page: number
  /** Text before the number, e.g. `A1-`. */
  prefix: string
  /** How its pages are numbered; `none` shows the prefix alone. */
  style: "decimal" | "roman" | "none"
  /** Number of its first page. */
  first: number
}

/** Labels the pages (ISO 32000-1:2008, 12.4.2); pages before the first run, or all if there is none, are numbered from 1. */
export function labelPages(pdf: PDFDocument, labels: readonly PageLabel[]): void {
  const { context } = pdf
  const sorted = [...labels].sort((a, b) => a.page - b.page)
  const whole: PageLabel = { page: 1, prefix: "", style: "decimal", first: 1 }
  const runs = sorted[0]?.page === 1 ? sorted : [whole, ...sorted]
  const rows = runs.flatMap((run) => [context.obj(run.page - 1), labelDict(pdf, run)])
  pdf.catalog.set(PDFName.of("PageLabels"), context.obj({ Nums: context.obj(rows) }))
}

const styles = { decimal: "D", roman: "r" } as const

function labelDict({ context }: PDFDocument, { prefix, style, first }: PageLabel): PDFDict {
  const label = context.obj({})
  if (style !== "none") {
    label.set(PDFName.of("S"), PDFName.of(styles[style]))
    label.set(PDFName.of("St"), context.obj(first))
  }
  if (prefix !== "") label.set(PDFName.of("P"), PDFHexString.fromText(prefix))
  return label
}
