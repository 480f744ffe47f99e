import { OPS } from "pdfjs-dist/legacy/build/pdf.mjs"

import type { OpenPdf } from "./open.ts"

const painting = new Set<number>([
  OPS.showText,
  OPS.showSpacedText,
  OPS.nextLineShowText,
  OPS.nextLineSetSpacingShowText,
  OPS.paintImageXObject,
  OPS.paintInlineImageXObject,
  OPS.paintImageMaskXObject,
  OPS.paintFormXObjectBegin,
  OPS.shadingFill,
])

const opening = new Set<number>([OPS.beginMarkedContent, OPS.beginMarkedContentProps])

/** Path operators of pdf.js that end in a stroke or a fill, as the first argument of `constructPath` names them. */
const strokesOrFills = new Set<number>([
  OPS.stroke,
  OPS.closeStroke,
  OPS.fill,
  OPS.eoFill,
  OPS.fillStroke,
  OPS.eoFillStroke,
  OPS.closeFillStroke,
  OPS.closeEOFillStroke,
])

/** How many times each page paints outside all marked content, as pdf.js reads it: page number to count, pages with none left out. */
export async function untaggedPaint(pdf: OpenPdf): Promise<Map<number, number>> {
  const counts = new Map<number, number>()
  for (let page = 1; page <= pdf.numPages; page += 1) {
    const proxy = await pdf.getPage(page)
    const { fnArray, argsArray } = await proxy.getOperatorList()
    let depth = 0
    for (const [index, operator] of fnArray.entries()) {
      if (opening.has(operator)) depth += 1
      if (operator === OPS.endMarkedContent) depth -= 1
      const args: unknown = argsArray[index]
      const paints =
        painting.has(operator) ||
        (operator === OPS.constructPath && Array.isArray(args) && strokesOrFills.has(args[0]))
      if (paints && depth === 0) counts.set(page, (counts.get(page) ?? 0) + 1)
    }
    proxy.cleanup()
  }
  return counts
}
