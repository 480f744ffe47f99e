import { mkdirSync, readFileSync, writeFileSync } from "node:fs"
import { dirname, join } from "node:path"
import { instantAt } from "../kernels/calendar/instant.ts"
import { Fault } from "../kernels/fault.ts"
import type { Press } from "./browser/launch.ts"
import type { LayoutFault } from "./browser/layout-check.ts"
import { textArea } from "./drawn.ts"
import type { Attachment } from "./pdf/attachments.ts"
import { finishPdf } from "./pdf/finish.ts"
import type { PageLabel } from "./pdf/page-labels.ts"
import { type PagePlan, type PrintedToPlan, printTwice } from "./print-twice.ts"
import type { PrintDocument } from "./site-data.ts"

/** One document as it came out. */
export interface PrintedDocument {
  document: PrintDocument
  /** Path of the PDF below the staging folder. */
  file: string
  pages: number
  /** Pages of each sheet, by its path. */
  sheetPages: Map<string, number>
}

/** What came of printing. */
export interface Printing {
  printed: PrintedDocument[]
  /** Pages with a character that no typeface here has: what the author wrote, so a warning in plain words. */
  warnings: string[]
}

/** What printing needs besides the documents. */
export interface PrintTask {
  staging: string
  /** Files to be embedded in a document, by its path; none unless given. */
  attachments: ReadonlyMap<string, readonly Attachment[]>
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
  const known = new Map<string, ReadonlyMap<string, number>>()
  let waiting: { document: PrintDocument; index: number }[] = []
  let done = 0
  const tab = async (): Promise<void> => {
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      const { document, index } = next
      const { result, layoutFaults } = await printOne(press, document, {
        ...task,
        guess: guessed(document, known.get(document.ref)),
      })
      printed[index] = result
      if (isWhole(document)) known.set(document.ref, result.sheetPages)
      faults.push(...layoutFaults.map((fault) => ({ path: document.path, fault })))
      done += 1
      task.progress(done, documents.length)
    }
  }
  const numbered = documents.map((document, index) => ({ document, index }))
  for (const whole of [true, false]) {
    waiting = numbered.filter(({ document }) => isWhole(document) === whole)
    await Promise.all(Array.from({ length: tabs }, tab))
  }
  const ours = faults.filter(({ fault }) => fault.kind !== "missing-sign")
  if (ours.length > 0) throw new Fault(faultText(ours))
  return { printed: printed.filter((each) => each !== undefined), warnings: missingSignTexts(faults) }
}

async function printOne(
  press: Press,
  document: PrintDocument,
  { staging, attachments, guess }: PrintTask & { guess?: PagePlan },
): Promise<{ result: PrintedDocument; layoutFaults: LayoutFault[] }> {
  const source = join(staging, "press", `${document.path}.html`)
  const html = readFileSync(source, "utf8")
  const planned = source.replace(/\.html$/, ".planned.html")
  const planHtml = async (plan: PagePlan | null): Promise<string> => {
    writeFileSync(planned, withPlan(html, document, plan))
    return planned
  }
  const rightHand = document.pack.bound
    ? document.pages.map((page) => page.sheet.path).filter(isFirstOfRoom(document))
    : []
  const came = await printTwice(press, planHtml, { contentWidth: textArea.portrait.width, rightHand, guess })
  const revision = document.pages[0]?.revision ?? null
  const pdf = await finishPdf(came.pdf, {
    title: `${document.jobTitle}: ${document.pack.title}`,
    language: "en-GB",
    created: new Date(instantAt(revision?.on ?? "2000-01-01", "00:00", "UTC")).toISOString(),
    documentKey: `${document.ref}/${document.path}/${revision?.letter ?? ""}`,
    attachments: attachments.get(document.path) ?? [],
    pageLabels: pageLabels(document, came.plan),
  })
  const file = `${document.path}.pdf`
  mkdirSync(dirname(join(staging, file)), { recursive: true })
  writeFileSync(join(staging, file), pdf)
  const result = { document, file, pages: came.pages, sheetPages: sheetPages(document, came) }
  return { result, layoutFaults: came.layoutFaults }
}

/** The archive holds every sheet of its job, so it is printed first: it tells how many pages each sheet takes. */
function isWhole(document: PrintDocument): boolean {
  return document.pack.id === "archive"
}

/** The likely pages of a document without a contents page, from what its sheets took elsewhere. */
function guessed(
  document: PrintDocument,
  sheetPages: ReadonlyMap<string, number> | undefined,
): PagePlan | undefined {
  if (!sheetPages || document.pack.bound) return undefined
  const starts = new Map<string, number>()
  let next = 1
  for (const { sheet } of document.pages) {
    starts.set(sheet.path, next)
    next += sheetPages.get(sheet.path) ?? 1
  }
  return { pages: next - 1, starts, blanksBefore: new Set() }
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
  const first = document.pages[0]?.sheet.path ?? ""
  pages?.set("contents", (plan?.starts.get(first) ?? 2) - 1)
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
