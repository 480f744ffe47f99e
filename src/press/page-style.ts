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
  /** The mark of its room on the outer edge of a bound pack; none for what belongs to no room. */
  tab?: EdgeTab
}

/** A room's mark on the outer edge of the page: each room's lies lower than the one before, so that the closed book shows them all. */
export interface EdgeTab {
  room: string
  /** Place of the room among those of the pack, from 0, and how many there are. */
  index: number
  of: number
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
const footHeight: Mm = 27

/**
 * The style of a sheet's pages: size, margins (the wide one on the bound edge), and the title block in the margins with the
 * QR. The sheet's total of pages is left as a mark, `@@pages:<sheet>@@`, for the second pass. Browsers clip what a margin
 * does not hold and tell nobody, so its texts stand in `--margin-texts` too, as JSON, to be measured before printing.
 */
export function pageStyle(sheet: PageHead, block: TitleBlock): string {
  const name = pageName(sheet)
  const head = `font: ${headFont}; white-space: pre-line; overflow-wrap: anywhere; border-bottom: 0.35mm solid #000; vertical-align: bottom; padding-bottom: 1.2mm;`
  const foot = `font: ${footFont}; white-space: pre-line; overflow-wrap: anywhere; border-top: 0.7mm solid #000; vertical-align: top; padding-top: 1.6mm;`
  const total = `${cssText(`Sheet ${sheet.number}, page `)} counter(c-${name}) ${cssText(` of @@pages:${sheet.path}@@\n`)} ${cssText("Page ")} counter(page) ${cssText(" of ")} counter(pages)`
  const boxes = [
    `@top-left { content: ${cssText(block.place)}; ${head} text-align: left; width: ${shares.place}% }`,
    `@top-right { content: ${cssText(`${sheet.number}  ${sheet.title}`)}; ${head} text-align: right; width: ${shares.title}% }`,
    `@bottom-left { content: ${cssText(leftFoot(sheet, block))}; ${foot} text-align: left; width: ${shares.job}% }`,
    `@bottom-center { content: ${total} ${cssText(centreFoot(sheet, block))}; ${foot} text-align: left; width: ${shares.sheet}% }`,
    `@bottom-right { content: url("${qrData(sheet)}"); ${foot} text-align: right; padding-top: 1mm; width: ${shares.qr}% }`,
  ].join("\n  ")
  const texts = cssText(JSON.stringify(marginTexts(sheet, block)))
  return `@page ${name} {
  size: ${sizes[sheet.orientation]}; margin: ${margins[sheet.orientation].loose}; counter-increment: c-${name};
  ${boxes}
}
${block.pack.bound ? boundPages(name, sheet, block) : ""}.p-${name} { page: ${name}; --margin-texts: ${texts} }`
}

const sizes: Record<PageHead["orientation"], string> = {
  portrait: "A4",
  landscape: "A4 landscape",
  "fold-out": "A3 landscape",
}

/**
 * Margins, top, right, bottom, left. Loose paper is punched at the left or, lying, at the head: both are wide. Bound and
 * printed on both sides, the wide one is at the spine: a lying page is turned with its head to the left on both sides of
 * the leaf, so its spine is the head on a right-hand page and the foot on a left-hand one.
 */
const margins: Record<PageHead["orientation"], { loose: string; right: string; left: string }> = {
  portrait: { loose: "16mm 10mm 33mm 20mm", right: "16mm 10mm 33mm 20mm", left: "16mm 20mm 33mm 10mm" },
  landscape: { loose: "23mm 10mm 33mm 20mm", right: "23mm 15mm 33mm 15mm", left: "16mm 15mm 40mm 15mm" },
  "fold-out": { loose: "16mm 10mm 33mm 20mm", right: "16mm 10mm 33mm 20mm", left: "16mm 10mm 33mm 20mm" },
}

/** The right-hand and left-hand pages of a sheet in a bound pack. */
function boundPages(name: string, { orientation }: PageHead, { tab }: TitleBlock): string {
  const turn = orientation === "landscape" ? " page-orientation: rotate-left;" : ""
  const edge = tab && orientation === "portrait" ? edgeTab(tab) : null
  const right = edge ? ` @right-top { ${edge} margin-left: ${tabGap}mm }` : ""
  const left = edge ? ` @left-top { ${edge} margin-left: ${printersEdge}mm }` : ""
  return `@page ${name}:right { margin: ${margins[orientation].right};${turn}${right} }
@page ${name}:left { margin: ${margins[orientation].left};${turn}${left} }
`
}

/** What office printers leave white at the edge of the paper, mm, and the gap between text and tab. */
const printersEdge: Mm = 5
const tabGap: Mm = 0.6

/** Height for all tabs together, the whole text area and no more; the highest one tab is, mm. */
const tabsHeight: Mm = 240
const highestTab: Mm = 16

function edgeTab({ room, index, of }: EdgeTab): string {
  const height = Math.min(highestTab, tabsHeight / of)
  const at = (height * index).toFixed(2)
  return `content: ${cssText(room)}; writing-mode: vertical-rl; width: 4.4mm; height: ${height.toFixed(2)}mm; margin-top: ${at}mm; background: #000; color: #fff; font: 700 9pt/4.4mm Rod; text-align: center; vertical-align: middle; white-space: nowrap;`
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
    { text: leftFoot(sheet, block), width: share(shares.job), ...foot },
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

function leftFoot({ orientation }: PageHead, { job, revision }: TitleBlock): string {
  const whose = `${job.title}\n${job.site}\nRevision: ${revision.text}\n${revision.by}, ${dateText(revision.on)}`
  const [first, second] = folds
  return orientation === "fold-out"
    ? `${whose}\nTo A4: fold ${first} and ${second} mm from the left edge`
    : whose
}

/**
 * Folds of A3 to A4 with a margin of 20 mm to punch, mm from the left edge: leaves of 125, 105 and 190 (from memory: DIN 824,
 * form A).
 */
const folds = [125, 230] as const

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
