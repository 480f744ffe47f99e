import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { pathToFileURL } from "node:url"

import { findBrowser } from "../../../src/press/browser/find.ts"
import type { Press } from "../../../src/press/browser/launch.ts"
import { withBrowser } from "../../../src/press/browser/launch.ts"
import type { FinishOptions } from "../../../src/press/pdf/finish.ts"

/** Runs `use` with the packaged browser where there is one for this machine, else with the machine's own. */
export async function withTestPress<T>(use: (press: Press, folder: string) => Promise<T>): Promise<T> {
  const packaged = findBrowser({ ...process.env, STOREY_ROD_BROWSER: "packaged" })
  const search = "found" in packaged ? packaged : findBrowser(process.env)
  if ("missing" in search) throw new Error(search.missing)
  const folder = mkdtempSync(join(tmpdir(), "storey-rod-press-test-"))
  try {
    return await withBrowser(search.found, (press) => use(press, folder))
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Folder of the typeface that sheets are set in. */
export const fontFolder = new URL("../../../templates/fonts/", import.meta.url)

/** Names by which the sheets' typeface appears inside a PDF. */
export const allowedFonts = ["IBMPlexSans", "IBMPlexSans-SmBld", "IBMPlexSans-Bold"]

/** Content width of the test page, mm: A4 less 15 mm on each side. */
export const contentWidth = 180

/** Writes a small A4 document set in the sheets' typeface, and names the file. */
export function htmlFile(folder: string, body: string, style = ""): string {
  const path = join(folder, "page.html")
  writeFileSync(path, htmlOf(body, style))
  return path
}

function htmlOf(body: string, style: string): string {
  const face = (file: string, weight: number): string =>
    `@font-face{font-family:Sheet;font-weight:${weight};src:url(${new URL(file, fontFolder).href})}`
  return `<!doctype html><html lang="en-GB"><head><meta charset="utf-8"><title>Trial sheet</title><style>
${face("IBMPlexSans-Regular.woff2", 400)}${face("IBMPlexSans-SemiBold.woff2", 600)}${face("IBMPlexSans-Bold.woff2", 700)}
@page{size:A4;margin:15mm;@bottom-right{content:"page " counter(page) " of " counter(pages);font:600 9pt Sheet}}
body{margin:0;font:10.5pt Sheet;color:#000}a{color:#000}section{break-before:page}
table{border-collapse:collapse}th,td{border:.3mm solid #777;padding:1mm}
${style}</style></head><body>${body}</body></html>`
}

/** A document with what sheets have: contents, headings, list, table, drawing, tick boxes, emphasis. */
export const trialBody = `<h1>Room A1</h1>
<nav aria-label="Contents"><ol><li><a href="#one">Sequence</a></li><li>then <a href="#two">Drawing</a></li></ol></nav>
<section id="one" data-sheet="01"><h2>Sequence</h2><p>Screws <strong>4 × 40</strong>, <em>not</em> nails. <a href="https://jobs.example.co.uk/k7mq3x2p/01/a/">Hosted copy</a></p>
<aside>Wear a mask when you cut.</aside>
<table><thead><tr><th scope="col">Step</th><th scope="col">Done</th></tr></thead>
<tbody><tr><td>Lay out ½ of the room ≥ 3,940 mm → door</td><td><span role="img" aria-label="tick box" style="display:inline-block;width:4mm;height:4mm;border:.3mm solid #000"></span></td></tr></tbody></table></section>
<section id="two" data-sheet="02"><h2>Drawing</h2>
<svg role="img" aria-label="plan of the room" width="100mm" height="60mm" viewBox="0 0 100 60"><path d="M5 5h90v50H5z" fill="none" stroke="#000"/><text x="20" y="30" font-size="4">3,940</text></svg>
<ul><li>Scale 1:50</li><li>Check on site<ul><li>before cutting</li></ul></li></ul></section>`

/** Finishing of the trial document. */
export const trialFinish: FinishOptions = {
  title: "Trial pack – room A1",
  language: "en-GB",
  created: "2027-02-08T09:00:00Z",
  documentKey: "trial/room-a1/a",
  attachments: [],
  pageLabels: [],
}

/** A file address of a path, for use in a page. */
export function fileAddress(path: string): string {
  return pathToFileURL(path).href
}
