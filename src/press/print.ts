import { statSync } from "node:fs"
import { pathToFileURL } from "node:url"

import { ParseSpeeds, PDFDocument } from "pdf-lib"
import type { Page } from "puppeteer"

import { invariant } from "../kernels/fault.ts"
import type { Mm } from "../kernels/units.ts"
import { loadFonts } from "./browser/fonts-loaded.ts"
import type { Press } from "./browser/launch.ts"
import type { LayoutFault } from "./browser/layout-check.ts"
import { layoutFaults } from "./browser/layout-check.ts"
import { missingSigns, shrunkFault } from "./browser/print-check.ts"
import { contentOf } from "./pdf/artifacts.ts"
import { destinationsOf } from "./pdf/destinations.ts"

/** How a page is printed. */
export interface PrintOptions {
  /** Width between the margins of the usual page, mm: the style sheet's page width less its two margins. */
  contentWidth: Mm
  /** Without tags and outline, for a first pass whose page numbers alone are wanted; false unless given. */
  draft?: boolean
}

/** One document as the browser printed it. */
export interface Printed {
  /** As the browser wrote it; `finishPdf` makes it the same every time. */
  pdf: Uint8Array
  /** Id of each element that a link points to, and its page, from 1. */
  destinations: Map<string, number>
  pages: number
  layoutFaults: LayoutFault[]
}

/**
 * Prints one HTML file on paper of the size its style sheet asks for.
 * Every declared font is loaded first, and the layout checked at the width of the paper.
 * @throws Fault when a font does not load, a file is missing, or the page asks for anything from the network
 */
export async function printPdf(press: Press, htmlPath: string, options: PrintOptions): Promise<Printed> {
  const limit = Math.round(shortestLimit + limitPerByte * sizeOf(htmlPath))
  return press.withPage({ name: htmlPath, limit }, (page) => printOn(page, htmlPath, options))
}

/** Two minutes, and half a minute for each million bytes, in milliseconds: many times what a slow machine takes. */
const shortestLimit = 120_000
const limitPerByte = 0.03

function sizeOf(path: string): number {
  return statSync(path, { throwIfNoEntry: false })?.size ?? 0
}

async function printOn(
  page: Page,
  htmlPath: string,
  { contentWidth, draft }: PrintOptions,
): Promise<Printed> {
  await openForPrint(page, { htmlPath, contentWidth })
  const faults = await layoutFaults(page, contentWidth)
  const tagged = draft !== true
  const pdf = await page.pdf({
    preferCSSPageSize: true,
    printBackground: true,
    tagged,
    outline: tagged,
    timeout: 0,
  })
  const read = await PDFDocument.load(pdf, { updateMetadata: false, parseSpeed: ParseSpeeds.Fastest })
  const contents = read.getPages().map(contentOf)
  faults.push(...shrunkFault(contents), ...missingSigns(contents))
  return { pdf, destinations: destinationsOf(read), pages: read.getPageCount(), layoutFaults: faults }
}

async function openForPrint(
  page: Page,
  { htmlPath, contentWidth }: { htmlPath: string; contentWidth: Mm },
): Promise<void> {
  const refused: string[] = []
  page.on("requestfailed", (request) => refused.push(request.url()))
  page.setDefaultTimeout(0)
  await page.emulateMediaType("print")
  await page.setViewport({ width: Math.floor((contentWidth * 96) / 25.4), height: 1000 })
  await page.goto(pathToFileURL(htmlPath).href, { waitUntil: "load", timeout: 0 })
  await loadFonts(page)
  invariant(refused.length === 0, `${htmlPath} asks for what is not there: ${refused.join(", ")}`)
}
