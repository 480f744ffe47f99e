import type { JobFile } from "../intake/schema/job.ts"
import { dateText } from "../kernels/calendar/date-text.ts"
import type { Sheet } from "../sheets/numbers.ts"
import type { Pack } from "../sheets/packs.ts"
import type { Revision } from "./addresses.ts"
import { qrSvg } from "./qr.ts"

/** What the margins of a sheet's pages carry, beside the sheet itself. */
export interface TitleBlock {
  job: JobFile
  revision: Revision
  pack: Pick<Pack, "title" | "bound">
  /** Room name for the head of the page, or the job's. */
  place: string
}

/** Side of the QR with its quiet zone on paper, mm: over half a millimetre a module. */
const qrSide = 25

/** What of a sheet its pages carry in their margins. */
export type PageHead = Pick<Sheet, "path" | "number" | "title" | "orientation"> & {
  /** What its QR opens. */
  address: string
}

/** The contents page of a bound pack: its QR opens the job's own page. */
export function contentsHead(job: JobFile): PageHead {
  return {
    path: "contents",
    number: "J-50",
    title: "Contents",
    orientation: "portrait",
    address: `${job.hosted}/${job.code}/`,
  }
}

/**
 * The style of a sheet's pages: size, margins (the wide one on the bound edge), and the title block in the margins with the
 * QR. The sheet's total of pages is left as a mark, `@@pages:<sheet>@@`, for the second pass.
 */
export function pageStyle(sheet: PageHead, block: TitleBlock): string {
  const name = pageName(sheet)
  const counter = `c-${name}`
  const { address } = sheet
  const landscape = sheet.orientation === "landscape"
  const head = `font: 600 9.5pt Rod; white-space: pre-line; border-bottom: 0.35mm solid #000; vertical-align: bottom; padding-bottom: 1.2mm;`
  const foot = `font: 9pt/1.3 Rod; white-space: pre-line; border-top: 0.7mm solid #000; vertical-align: top; padding-top: 1.6mm;`
  const boxes = [
    `@top-left { content: ${cssText(block.place)}; ${head} text-align: left; width: 60% }`,
    `@top-right { content: ${cssText(`${sheet.number}  ${sheet.title}`)}; ${head} text-align: right; width: 40% }`,
    `@bottom-left { content: ${cssText(leftFoot(block))}; ${foot} text-align: left; width: 28% }`,
    `@bottom-center { content: ${cssText(`Sheet ${sheet.number}, page `)} counter(${counter}) ${cssText(` of @@pages:${sheet.path}@@\n`)} ${cssText("Page ")} counter(page) ${cssText(" of ")} counter(pages) ${cssText(` of: ${block.pack.title}\nIs this paper current? Scan, or type:\n${address.replace("https://", "")}`)}; ${foot} text-align: left; width: 44% }`,
    `@bottom-right { content: url("${qrData(sheet)}"); ${foot} text-align: right; padding-top: 1mm; width: 28% }`,
  ].join("\n  ")
  const size = landscape ? "A4 landscape" : "A4"
  return `@page ${name} {
  size: ${size}; margin: 16mm 10mm 38mm 20mm; counter-increment: ${counter};
  ${boxes}
}
${block.pack.bound ? `@page ${name}:left { margin-left: 10mm; margin-right: 20mm }\n` : ""}.p-${name} { page: ${name} }`
}

/** The name of a sheet's pages in the style sheet. */
export function pageName(sheet: Pick<Sheet, "path">): string {
  return `s-${sheet.path}`
}

function leftFoot({ job, revision }: TitleBlock): string {
  return `${job.title}\n${job.site}\nRevision: ${revision.text}\n${revision.by}, ${dateText(revision.on)}`
}

function qrData(sheet: PageHead): string {
  const { svg } = qrSvg(sheet.address, `Address of the hosted copy of sheet ${sheet.number}`)
  const sized = svg.replace("<svg ", `<svg width="${qrSide}mm" height="${qrSide}mm" `)
  return `data:image/svg+xml;base64,${Buffer.from(sized).toString("base64")}`
}

/** Text as a CSS string: every sign that could end the string, the rule or the style element is escaped. */
export function cssText(text: string): string {
  const safe = [...text].map((sign) =>
    /[\p{L}\p{N} .,:;()+\-–—·/@×²?]/u.test(sign) ? sign : `\\${sign.codePointAt(0)!.toString(16)} `,
  )
  return `"${safe.join("")}"`
}
