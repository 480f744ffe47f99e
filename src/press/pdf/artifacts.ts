import type { PDFDocument, PDFPage } from "pdf-lib"
import { decodePDFRawStream, PDFArray, PDFName, PDFRawStream } from "pdf-lib"

import { invariant } from "../../kernels/fault.ts"

/**
 * Marks everything painted on a page that is not part of the tagged text, such as the text in its margins,
 * its rules and backgrounds, as an artifact (ISO 14289-1:2014, 7.1: all content is tagged or an artifact).
 */
export function markArtifacts(pdf: PDFDocument): void {
  for (const page of pdf.getPages()) {
    const marked = withArtifacts(contentOf(page))
    const stream = pdf.context.flateStream(new Uint8Array(Buffer.from(marked, "latin1")))
    page.node.set(PDFName.of("Contents"), pdf.context.register(stream))
  }
}

/** What a page paints, one operator or a few to the line, as the browser writes it; each character one byte. */
export function contentOf(page: PDFPage): string {
  const contents = page.node.Contents()
  const parts = contents instanceof PDFArray ? contents.asArray() : contents ? [contents] : []
  const streams = parts.map((part) => page.doc.context.lookup(part))
  const texts = streams.map((stream) => {
    invariant(stream instanceof PDFRawStream, "a page's content is not a stream")
    return Buffer.from(decodePDFRawStream(stream).decode()).toString("latin1")
  })
  return texts.join("\n")
}

const building = new Set(["m", "l", "c", "v", "y", "h", "re", "W", "W*"])
const painting = new Set(["f", "F", "f*", "S", "s", "B", "B*", "b", "b*", "Do", "sh", "BT"])
const showing = new Set(["Tj", "TJ", "'"])
const others = new Set(
  "q Q cm w J j M d ri i gs CS cs SC SCN sc scn G g RG rg K k n ET Tc Tw Tz TL Tf Tr Ts Td TD Tm T* Tj TJ ' BMC BDC EMC".split(
    " ",
  ),
)

/**
 * A content stream with an artifact around each stretch that paints outside the marked text.
 * A path is looked at to its end first, as no mark may stand inside it, and one that only clips is let be.
 * @throws Fault where a line does not end with an operator known here, so that nothing is marked by guess
 */
export function withArtifacts(content: string): string {
  const lines = content.split("\n").filter((line) => line.trim() !== "")
  const marked: string[] = []
  let path: string[] = []
  const state = { depth: 0, open: false, inText: false, mixed: false }

  const openIfPainting = (operator: string): void => {
    if (state.depth > 0 || state.open) return
    const paints = state.inText || state.mixed ? state.mixed && showing.has(operator) : painting.has(operator)
    if (!paints) return
    marked.push("/Artifact BMC")
    state.open = true
  }
  const close = (): void => {
    if (state.open) marked.push("EMC")
    state.open = false
  }

  for (const [index, line] of lines.entries()) {
    const operator = operatorOf(line)
    if (operator === "BT") state.mixed = state.depth === 0 && hasMarkBeforeEnd(lines, index)
    if (building.has(operator)) {
      path.push(line)
      continue
    }
    if (operator === "BDC" || operator === "BMC") {
      invariant(
        !(state.inText && state.open && !state.mixed),
        "a mark opens inside a text that is an artifact",
      )
      close()
      state.depth += 1
    }
    if (operator === "EMC") state.depth -= 1
    openIfPainting(operator)
    marked.push(...path, line)
    path = []
    if (operator === "BT") state.inText = true
    if (state.inText && state.mixed && state.open) close()
    if (operator === "ET") Object.assign(state, { inText: false, mixed: false })
  }
  invariant(state.depth === 0 && path.length === 0, "a page's content ends inside a mark or a path")
  close()
  return `${marked.join("\n")}\n`
}

/** True if a text object that begins outside all marks has a mark inside it: then only its own stray signs are artifacts. */
function hasMarkBeforeEnd(lines: readonly string[], begin: number): boolean {
  for (const line of lines.slice(begin + 1)) {
    if (/\bET\s*$/.test(line)) return false
    if (/\bB[DM]C\s*$/.test(line)) return true
  }
  return false
}

function operatorOf(line: string): string {
  const operator = /([A-Za-z]+\*?|')\s*$/.exec(line)?.[1] ?? ""
  const known = building.has(operator) || painting.has(operator) || others.has(operator)
  invariant(known, `a page's content has a line that is not understood: ${line.slice(0, 60)}`)
  return operator
}
