import type { JobFile } from "../intake/schema/job.ts"
import { dateText } from "../kernels/calendar/date-text.ts"
import type { Mm } from "../kernels/units.ts"
import type { Sheet } from "../sheets/numbers.ts"
import type { Pack } from "../sheets/packs.ts"
import type { Revision } from "./addresses.ts"
import { textArea } from "./drawn.ts"
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

/** A text in a margin of a sheet's pages, as the check of the layout measures it. */
export interface MarginText {
  text: string
  /** CSS shorthand of its type. */
  font: string
  /** Room for it, mm. */
  width: Mm
  height: Mm
}

/** Room in the margins, mm: the margin less its line, its padding and what printers leave white. */
const headHeight: Mm = 9
const footHeight: Mm = 30

/**
 * The style of a sheet's pages: size, margins (the wide one on the bound edge), and the title block in the margins with the
 * QR. The sheet's total of pages is left as a mark, `@@pages:<sheet>@@`, for the second pass. Browsers clip what a margin
 * does not hold and tell nobody, so its texts stand in `--margin-texts` too, as JSON, to be measured before printing.
 */
export function pageStyle(sheet: PageHead, block: TitleBlock): string {
  const name = pageName(sheet)
  const landscape = sheet.orientation === "landscape"
  const head = `font: ${headFont}; white-space: pre-line; overflow-wrap: anywhere; border-bottom: 0.35mm solid #000; vertical-align: bottom; padding-bottom: 1.2mm;`
  const foot = `font: ${footFont}; white-space: pre-line; overflow-wrap: anywhere; border-top: 0.7mm solid #000; vertical-align: top; padding-top: 1.6mm;`
  const total = `${cssText(`Sheet ${sheet.number}, page `)} counter(c-${name}) ${cssText(` of @@pages:${sheet.path}@@\n`)} ${cssText("Page ")} counter(page) ${cssText(" of ")} counter(pages)`
  const boxes = [
    `@top-left { content: ${cssText(block.place)}; ${head} text-align: left; width: ${shares.place}% }`,
    `@top-right { content: ${cssText(`${sheet.number}  ${sheet.title}`)}; ${head} text-align: right; width: ${shares.title}% }`,
    `@bottom-left { content: ${cssText(leftFoot(block))}; ${foot} text-align: left; width: ${shares.job}% }`,
    `@bottom-center { content: ${total} ${cssText(centreFoot(sheet, block))}; ${foot} text-align: left; width: ${shares.sheet}% }`,
    `@bottom-right { content: url("${qrData(sheet)}"); ${foot} text-align: right; padding-top: 1mm; width: ${shares.qr}% }`,
  ].join("\n  ")
  const size = landscape ? "A4 landscape" : "A4"
  const texts = cssText(JSON.stringify(marginTexts(sheet, block)))
  return `@page ${name} {
  size: ${size}; margin: 16mm 10mm 38mm 20mm; counter-increment: c-${name};
  ${boxes}
}
${block.pack.bound ? `@page ${name}:left { margin-left: 10mm; margin-right: 20mm }\n` : ""}.p-${name} { page: ${name}; --margin-texts: ${texts} }`
}

const headFont = "600 9.5pt Rod"
const footFont = "9pt/1.3 Rod"

/** Shares of the width of a page that the boxes in its margins take, per cent. */
const shares = { place: 60, title: 40, job: 28, sheet: 44, qr: 28 } as const

/** The texts of a sheet's margins with the room they have; page numbers stand as two figures. */
export function marginTexts(sheet: PageHead, block: TitleBlock): MarginText[] {
  const share = (percent: number) => (textArea[sheet.orientation].width * percent) / 100
  const head = { font: headFont, height: headHeight }
  const foot = { font: footFont, height: footHeight }
  const numbers = `Sheet ${sheet.number}, page 88 of 88\nPage 888 of 888`
  return [
    { text: block.place, width: share(shares.place), ...head },
    { text: `${sheet.number}  ${sheet.title}`, width: share(shares.title), ...head },
    { text: leftFoot(block), width: share(shares.job), ...foot },
    { text: `${numbers}${centreFoot(sheet, block)}`, width: share(shares.sheet), ...foot },
  ]
}

/** The name of a sheet's pages in the style sheet. */
export function pageName(sheet: Pick<Sheet, "path">): string {
  return `s-${sheet.path}`
}

function centreFoot(sheet: PageHead, { pack }: TitleBlock): string {
  return ` of: ${pack.title}\nIs this paper current? Scan, or type:\n${sheet.address.replace("https://", "")}`
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
