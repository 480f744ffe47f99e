import { Fault } from "../kernels/fault.ts"
import type { Mm } from "../kernels/units.ts"
import type { Press } from "./browser/launch.ts"
import { printPdf } from "./print.ts"
import { sha256 } from "./revisions/fingerprint.ts"

/** How many pages a sheet takes, wherever it is bound. */
export interface SheetMeasure {
  /** Hash of what was measured. */
  of: string
  pages: number
  /** True if it is set closer: that saves it a page with little on it. */
  tight: boolean
}

/** What measuring needs besides the document. */
export interface MeasureTask {
  contentWidth: Mm
  /** Part of the hash: measures hold for the same press and browser alone. */
  pressHash: string
  /** Measures of the last build, by the sheet's path. */
  known: ReadonlyMap<string, SheetMeasure>
  /** Writes HTML to a file of its own beside the document and names it. */
  write(name: string, html: string): string
}

/**
 * Counts the pages of every sheet of a document, set as usual and set closer, side by side in two drafts; sheets that are
 * what they were in the last build are not printed again.
 * @param html a document with its marks: `@@blank:<sheet>@@` before each sheet, `@@tight:<sheet>@@` in its class
 * @returns measures by the sheet's path, in the order of the document
 */
export async function measureSheets(
  press: Press,
  html: string,
  { contentWidth, pressHash, known, write }: MeasureTask,
): Promise<Map<string, SheetMeasure>> {
  const { head, sheets } = parted(html)
  const hashed = sheets.map(({ path, section }) => ({
    path,
    section,
    of: sha256(`${pressHash} ${press.version} ${section}`),
  }))
  const unknown = hashed.filter(({ path, of }) => known.get(path)?.of !== of)
  const draft = async (tight: boolean): Promise<Map<string, number>> => {
    if (unknown.length === 0) return new Map()
    const file = write(tight ? "tight" : "loose", draftHtml(head, unknown, tight))
    const { destinations, pages } = await printPdf(press, file, { contentWidth, draft: true })
    return pagesEach(unknown, destinations, pages)
  }
  const [loose, tight] = await Promise.all([draft(false), draft(true)])
  return new Map(
    hashed.map(({ path, of }): [string, SheetMeasure] => {
      const pages = loose.get(path)
      const closer = tight.get(path)
      if (pages === undefined || closer === undefined) return [path, known.get(path)!]
      return [path, { of, pages: Math.min(pages, closer), tight: closer < pages }]
    }),
  )
}

interface SheetPart {
  path: string
  section: string
}

/** A document taken apart: what comes before its first sheet, and each sheet's own HTML. */
function parted(html: string): { head: string; sheets: SheetPart[] } {
  const [head = "", ...parts] = html.split(/(?=@@blank:)/)
  const sheets = parts.map((part) => {
    const path = /^@@blank:([a-z0-9-]+)@@/.exec(part)?.[1] ?? ""
    const end = part.lastIndexOf("</section>") + "</section>".length
    return { path, section: part.slice(part.indexOf("<section"), end) }
  })
  return { head, sheets }
}

/** The sheets alone behind a page of links to them, as only what is linked to has a place. */
function draftHtml(head: string, sheets: readonly SheetPart[], tight: boolean): string {
  const opening = head.slice(0, head.indexOf("<body>") + "<body>".length)
  const links = sheets.map(({ path }) => `<a href="#${path}">.</a>`).join("")
  const body = sheets.map(({ section }) => section).join("\n")
  return `${opening}<section class="sheet"><p>${links}</p></section>${body}</body></html>`
    .replace(/@@tight:[a-z0-9-]+@@/g, tight ? " tight" : "")
    .replace(/@@pages:[a-z0-9-]+@@/g, "88")
}

function pagesEach(
  sheets: readonly SheetPart[],
  destinations: ReadonlyMap<string, number>,
  pages: number,
): Map<string, number> {
  const startOf = (path: string): number => {
    const page = destinations.get(path)
    if (page === undefined) throw new Fault(`sheet ${path} has no place in the draft it was measured in`)
    return page
  }
  return new Map(
    sheets.map(({ path }, index) => {
      const next = sheets[index + 1]
      return [path, (next ? startOf(next.path) : pages + 1) - startOf(path)]
    }),
  )
}
