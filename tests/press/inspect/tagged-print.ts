import { PDFDocument } from "pdf-lib"

import { printPdf } from "../../../src/press/print.ts"
import { contentWidth, htmlFile, withTestPress } from "./press.ts"

/** What the browser writes for a document with lists, a table, links and emphasis, after it has printed another. */
export async function taggedPrint(): Promise<Uint8Array> {
  return withTestPress(async (press, folder) => {
    await printPdf(press, htmlFile(folder, "<table><tr><th>before</th></tr></table>"), { contentWidth })
    return (await printPdf(press, htmlFile(folder, body), { contentWidth })).pdf
  })
}

/** The document after one change, written and read again. */
export async function reworked(raw: Uint8Array, change: (pdf: PDFDocument) => void): Promise<PDFDocument> {
  const pdf = await PDFDocument.load(raw, { updateMetadata: false })
  change(pdf)
  return PDFDocument.load(await pdf.save({ addDefaultPage: false }), { updateMetadata: false })
}

const body = `<h1>Room</h1><p>Use <strong>new</strong> <em>blades</em></p><aside>Dust</aside>
<ul style="background:#eee"><li style="background:#ddd">plain</li><li><a href="#end">link alone</a></li><li>with<ul><li>nested</li></ul></li></ul>
<table><thead><tr><th scope="col">Piece</th><th scope="col">mm</th></tr></thead><tbody><tr><th scope="row">skirting</th><td>3,940</td></tr></tbody></table>
<section id="end"><h2>End</h2><a href="https://jobs.example.co.uk/a/">copy</a></section>`
