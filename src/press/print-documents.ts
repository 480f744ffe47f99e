import { mkdirSync, readFileSync, writeFileSync } from "node:fs"
import { dirname, join } from "node:path"
import { instantAt } from "../kernels/calendar/instant.ts"
import { Fault } from "../kernels/fault.ts"
import type { Press } from "./browser/launch.ts"
import type { LayoutFault } from "./browser/layout-check.ts"
import { textArea } from "./drawn.ts"
import type { MadeDocument } from "./earlier.ts"
import { measureSheets, type SheetMeasure } from "./measure.ts"
import type { Attachment } from "./pdf/attachments.ts"
import { finishPdf } from "./pdf/finish.ts"
import type { PageLabel } from "./pdf/page-labels.ts"
import { printPdf } from "./print.ts"
import { type PagePlan, type PrintedToPlan, pagePlan, printTwice } from "./print-twice.ts"
import { sha256 } from "./revisions/fingerprint.ts"
import type { PrintDocument } from "./site-data.ts"

/** One document as it came out. */
export interface PrintedDocument {
  document: PrintDocument
  /** Path of the PDF below the staging folder. */
  file: string
  pages: number
  /** Pages of each sheet, by its path. */
  sheetPages: Map<string, number>
  /** What the manifest remembers of it; null where the print gave a warning, so that the next build gives it again. */
  made: MadeDocument | null
}

/** What an earlier build left of a job's documents. */
export interface EarlierDocuments {
  /** A document of the earlier output by its path, if there was one. */
  made(path: string): MadeDocument | undefined
  /** Puts its PDF into the staging folder; false where it is no longer what was made. */
  fetch(file: string): boolean
  measures: ReadonlyMap<string, SheetMeasure>
}

/** What came of printing. */
export interface Printing {
  printed: PrintedDocument[]
  /** Pages with a character that no typeface here has: what the author wrote, so a warning in plain words. */
  warnings: string[]
  /** What was measured of each sheet, by its job and its path. */
  measures: Map<string, ReadonlyMap<string, SheetMeasure>>
}

/** What printing needs besides the documents. */
export interface PrintTask {
  staging: string
  /** Files to be embedded in a document, by its path; none unless given. */
  attachments: ReadonlyMap<string, readonly Attachment[]>
  /** Documents printed before that are taken over where they are made of the same; none unless given. */
  earlier?: EarlierDocuments | undefined
  /** Hash of the press itself, part of what a document is made of. */
  pressHash: string
  /** Called after each document. */
  progress(done: number, of: number): void
}

/** Documents printed side by side. */
const tabs = 2

/**
 * Prints every document that Eleventy wrote under `press/` to its PDF, two at a time, in one browser.
 * @returns the documents in the order given, and a warning for each page with an empty box in place of a character
 * @throws Fault when a sheet does not fit its page: every such fault of every document is named
 */
export async function printDocuments(
  press: Press,
  documents: readonly PrintDocument[],
  task: PrintTask,
): Promise<Printing> {
  const printed: (PrintedDocument | undefined)[] = documents.map(() => undefined)
  const faults: { path: string; fault: LayoutFault }[] = []
  const measures = await measured(press, documents, task)
  const waiting = documents.map((document, index) => ({ document, index }))
  let done = 0
  const tab = async (): Promise<void> => {
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      const { document, index } = next
      const { result, layoutFaults } = await madeOnce(press, document, {
        ...task,
        measures: measures.get(document.ref) ?? new Map(),
      })
      printed[index] = result
      faults.push(...layoutFaults.map((fault) => ({ path: document.path, fault })))
      done += 1
      task.progress(done, documents.length)
    }
  }
  waiting.sort((a, b) => b.document.pages.length - a.document.pages.length || a.index - b.index)
  await Promise.all(Array.from({ length: tabs }, tab))
  const ours = faults.filter(({ fault }) => fault.kind !== "missing-sign")
  if (ours.length > 0) throw new Fault(faultText(ours))
  return {
    printed: printed.filter((each) => each !== undefined),
    warnings: missingSignTexts(faults),
    measures,
  }
}

/** The sheets of each job measured, off its archive, which holds them all. */
async function measured(
  press: Press,
  documents: readonly PrintDocument[],
  { staging, pressHash, earlier }: PrintTask,
): Promise<Printing["measures"]> {
  const measures = new Map<string, ReadonlyMap<string, SheetMeasure>>()
  for (const { ref, path, pack } of documents) {
    if (pack.id !== "archive") continue
    const source = join(staging, "press", `${path}.html`)
    const write = (name: string, html: string): string => {
      const file = source.replace(/html$/, `${name}.html`)
      writeFileSync(file, html)
      return file
    }
    const known = earlier?.measures ?? new Map()
    const task = { contentWidth: textArea.portrait.width, pressHash, known, write }
    measures.set(ref, await measureSheets(press, readFileSync(source, "utf8"), task))
  }
  return measures
}

interface OneTask extends PrintTask {
  /** Measures of the sheets of its job; none where its archive is not printed. */
  measures: ReadonlyMap<string, SheetMeasure>
}

interface OnePrint {
  result: PrintedDocument
  layoutFaults: LayoutFault[]
}

/** A document taken over from an earlier build where it is made of the same, else printed. */
async function madeOnce(press: Press, document: PrintDocument, task: OneTask): Promise<OnePrint> {
  const measures = isFoldOut(document) ? new Map<string, SheetMeasure>() : task.measures
  const html = readFileSync(join(task.staging, "press", `${document.path}.html`), "utf8").replace(
    /@@tight:([a-z0-9-]+)@@/g,
    (_, path: string) => (measures.get(path)?.tight ? " tight" : ""),
  )
  const madeOf = hashOf(html, document, { ...task, browser: press.version })
  const made = task.earlier?.made(document.path)
  const file = `${document.path}.pdf`
  if (made?.madeOf === madeOf && task.earlier?.fetch(file)) {
    const sheetPages = new Map(Object.entries(made.sheets))
    return { result: { document, file, pages: made.pages, sheetPages, made }, layoutFaults: [] }
  }
  return printOne(press, document, { ...task, measures, html, madeOf, made })
}

function hashOf(
  html: string,
  document: PrintDocument,
  { attachments, pressHash, browser }: OneTask & { browser: string },
): string {
  const embedded = (attachments.get(document.path) ?? []).map(({ name, bytes, mime }) => [
    name,
    mime,
    sha256(bytes),
  ])
  return sha256(
    JSON.stringify([pressHash, browser, finishOf(document), document.pack.bound, embedded, sha256(html)]),
  )
}

/** Title, language, date and key of a finished document; never the clock. */
function finishOf(document: PrintDocument) {
  const revision = document.pages[0]?.revision ?? null
  return {
    title: `${document.jobTitle}: ${document.pack.title}`,
    language: "en-GB",
    created: new Date(instantAt(revision?.on ?? "2000-01-01", "00:00", "UTC")).toISOString(),
    documentKey: `${document.ref}/${document.path}/${revision?.letter ?? ""}`,
  }
}

async function printOne(
  press: Press,
  document: PrintDocument,
  {
    staging,
    attachments,
    measures,
    html,
    madeOf,
    made,
  }: OneTask & { html: string; madeOf: string; made: MadeDocument | undefined },
): Promise<OnePrint> {
  const planned = join(staging, "press", `${document.path}.planned.html`)
  const written = (text: string): string => {
    writeFileSync(planned, text)
    return planned
  }
  const options = { contentWidth: textArea.portrait.width }
  const rightHand = rightHandOf(document)
  const contents = async () =>
    made?.contents || (await printPdf(press, written(contentsAlone(html)), { ...options, draft: true })).pages
  const guess = await guessed(document, measures, contents)
  const planHtml = async (plan: PagePlan | null): Promise<string> => written(withPlan(html, document, plan))
  const came = await printTwice(press, planHtml, { ...options, rightHand, guess })
  const pdf = await finishPdf(came.pdf, {
    ...finishOf(document),
    attachments: attachments.get(document.path) ?? [],
    pageLabels: pageLabels(document, came.plan),
  })
  const file = `${document.path}.pdf`
  mkdirSync(dirname(join(staging, file)), { recursive: true })
  writeFileSync(join(staging, file), pdf)
  const sheets = sheetPages(document, came)
  const kept: MadeDocument = {
    path: document.path,
    madeOf,
    pages: came.pages,
    contents: contentsPages(document, came.plan),
    sheets: Object.fromEntries(sheets),
  }
  const result = {
    document,
    file,
    pages: came.pages,
    sheetPages: sheets,
    made: came.layoutFaults.length > 0 ? null : kept,
  }
  return { result, layoutFaults: came.layoutFaults }
}

function isFoldOut({ pages }: PrintDocument): boolean {
  return pages.some(({ sheet }) => sheet.orientation === "fold-out")
}

/**
 * The likely pages of a document, from the measures of its sheets; none where one of them was not measured.
 * @param contents counts the pages of its contents
 */
async function guessed(
  document: PrintDocument,
  measures: ReadonlyMap<string, SheetMeasure>,
  contents: () => Promise<number>,
): Promise<PagePlan | undefined> {
  const unmeasured = document.pages.some(({ sheet }) => !measures.has(sheet.path))
  if (unmeasured || document.pages.length === 0) return undefined
  const before = document.pack.bound ? await contents() : 0
  const starts = new Map<string, number>()
  let next = before + 1
  for (const { sheet } of document.pages) {
    starts.set(sheet.path, next)
    next += measures.get(sheet.path)?.pages ?? 1
  }
  return pagePlan({ pages: next - 1, starts }, rightHandOf(document))
}

/** The contents of a bound document alone. */
function contentsAlone(html: string): string {
  const end = html.indexOf("@@blank:")
  const tail = "</body></html>"
  return `${end < 0 ? html : html.slice(0, end) + tail}`.replace(/@@[a-z]+:[a-z0-9-]+@@/g, "88")
}

/** Sheets of a bound document that start on a right-hand page. */
function rightHandOf(document: PrintDocument): string[] {
  if (!document.pack.bound) return []
  return document.pages.map((page) => page.sheet.path).filter(isFirstOfRoom(document))
}

/** Pages before the first sheet. */
function contentsPages(document: PrintDocument, plan: PagePlan): number {
  const first = document.pages[0]?.sheet.path ?? ""
  const blank = plan.blanksBefore.has(first) ? 1 : 0
  return (plan.starts.get(first) ?? 1) - 1 - blank
}

/** The first sheet of each room starts on the right when the pack is printed on both sides. */
function isFirstOfRoom(document: PrintDocument): (path: string) => boolean {
  const firsts = new Set<string>()
  let room: string | null = null
  for (const { sheet } of document.pages) {
    if (sheet.room !== null && sheet.room !== room) firsts.add(sheet.path)
    room = sheet.room
  }
  return (path) => firsts.has(path)
}

/** The document with its page numbers put in; without a plan, with marks as long as they will be. */
function withPlan(html: string, document: PrintDocument, plan: PagePlan | null): string {
  const pages = plan ? sheetPages(document, { plan }) : null
  if (plan) pages?.set("contents", contentsPages(document, plan))
  return html
    .replace(/@@pages:([a-z0-9-]+)@@/g, (_, path: string) => String(pages?.get(path) ?? 1))
    .replace(/@@start:([a-z0-9-]+)@@/g, (_, path: string) => String(plan?.starts.get(path) ?? 88))
    .replace(/@@blank:([a-z0-9-]+)@@/g, (_, path: string) =>
      plan?.blanksBefore.has(path) ? '<section class="blank"><p>This page is left blank.</p></section>' : "",
    )
}

/** Pages that each sheet takes: from its start to the start of the next, less a blank page between. */
function sheetPages(document: PrintDocument, { plan }: Pick<PrintedToPlan, "plan">): Map<string, number> {
  const paths = document.pages.map((page) => page.sheet.path)
  return new Map(
    paths.map((path, index) => {
      const next = paths[index + 1]
      const end =
        next === undefined ? plan.pages + 1 : plan.starts.get(next)! - (plan.blanksBefore.has(next) ? 1 : 0)
      return [path, end - (plan.starts.get(path) ?? 1)]
    }),
  )
}

/** Each page's label in a reader: its sheet's number and its page of that sheet, as the paper says. */
export function pageLabels({ pages }: Pick<PrintDocument, "pages">, plan: PagePlan): PageLabel[] {
  const own = pages.flatMap(({ sheet }): PageLabel[] => {
    const page = plan.starts.get(sheet.path) ?? 1
    const label: PageLabel = { page, prefix: `${sheet.number}, `, style: "decimal", first: 1 }
    const blank: PageLabel = { page: page - 1, prefix: "blank", style: "none", first: 1 }
    return plan.blanksBefore.has(sheet.path) ? [blank, label] : [label]
  })
  const opens = own[0]?.page ?? 1
  return opens > 1 ? [{ page: 1, prefix: "contents, ", style: "decimal", first: 1 }, ...own] : own
}

/** Sorted, as documents are printed side by side. */
function missingSignTexts(faults: readonly { path: string; fault: LayoutFault }[]): string[] {
  return faults
    .filter(({ fault }) => fault.kind === "missing-sign")
    .map(
      ({ path, fault }) =>
        `${path}.pdf, ${fault.text}: a character that the typeface does not have is printed as an empty box`,
    )
    .sort()
}

function faultText(faults: readonly { path: string; fault: LayoutFault }[]): string {
  const lines = faults.map(
    ({ path, fault }) =>
      `${path}: ${fault.kind} on ${fault.sheet || "no sheet"} by ${fault.by} mm: ${fault.text}`,
  )
  return `sheets do not fit their pages:\n${[...new Set(lines)].join("\n")}`
}
