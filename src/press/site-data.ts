import { existsSync } from "node:fs"
import { join } from "node:path"
import { dateText } from "../kernels/calendar/date-text.ts"
import type { Sheet } from "../sheets/numbers.ts"
import type { Pack } from "../sheets/packs.ts"
import { type Revision, revisionAddress } from "./addresses.ts"
import { textArea } from "./drawn.ts"
import { inListOrder, type OfficeRow, officeRow } from "./office-list.ts"
import { contentsHead, pageName, pageStyle } from "./page-style.ts"
import { recordFiles } from "./records/record-files.ts"
import { type RevisionPage, revisionPages } from "./revisions/revision-pages.ts"
import type { RevisedSheet, SetJob } from "./set-job.ts"
import { aroundSheet, type HostedJob, hostedJob, type SheetAround } from "./site/job-pages.ts"
import { templatesFolder } from "./templates.ts"

/** One sheet as the templates take it: the model and the words round it. */
export interface SheetPage {
  code: string
  jobTitle: string
  sheet: RevisedSheet
  place: string
  revision: Revision
  revisionOn: string
  address: string
  /** Entries it rests on in words, overridden ones marked. */
  rests: string[]
  pageClass: string
  /** The template that sets it: its kind's own where there is one. */
  template: string
  /** Width of the text area of its pages, mm. */
  width: number
}

/** One document to be printed: a pack, or a sheet alone. */
export interface PrintDocument {
  ref: string
  /** Where its HTML is written and its PDF goes, without ending, below the output folder. */
  path: string
  pack: Pick<Pack, "id" | "title" | "bound">
  jobTitle: string
  pages: SheetPage[]
  styles: string
}

/** Everything the templates are given. */
export interface SiteData {
  jobs: HostedJob[]
  /** The office's list. */
  office: OfficeRow[]
  hosted: (SheetPage & { around: SheetAround })[]
  /** Every sheet of every job, hosted or not. */
  all: SheetPage[]
  /** What the QR of each paper ever handed out opens. */
  revisions: RevisionPage[]
  documents: PrintDocument[]
}

/**
 * The templates' data for a set of jobs, in the order given.
 * @param office rows of the office's list, where it is to hold other jobs than these
 */
export function siteData(jobs: readonly SetJob[], office: readonly OfficeRow[] = jobs.map(rowOf)): SiteData {
  const pagesOf = (job: SetJob) => job.sheets.map((sheet) => sheetPage(job, sheet))
  return {
    jobs: jobs.map(hostedJob),
    office: inListOrder(office),
    hosted: jobs.flatMap((job) =>
      pagesOf(job)
        .filter((page) => page.sheet.hosted)
        .map((page) => ({ ...page, around: aroundSheet(job, page.sheet) })),
    ),
    all: jobs.flatMap(pagesOf),
    revisions: jobs.flatMap(revisionPages),
    documents: jobs.flatMap((job) => [
      ...job.packs.map((pack) => packDocument(job, pack)),
      ...singleDocuments(job),
    ]),
  }
}

/** The row of the office's list for a job, its records with it. */
export function rowOf(job: SetJob): OfficeRow {
  return officeRow(job, [...recordFiles(job).map(({ name }) => name), "manifest.json"])
}

function sheetPage(job: SetJob, sheet: RevisedSheet): SheetPage {
  const { result } = job
  const { revision } = sheet
  return {
    code: result.job.code,
    jobTitle: result.job.title,
    sheet,
    place: sheet.place,
    revision,
    revisionOn: dateText(revision.on),
    address: revisionAddress(result.job, sheet, revision),
    rests: sheet.restsInWords,
    pageClass: `p-${pageName(sheet)}`,
    template: templateOf(sheet),
    width: textArea[sheet.orientation].width,
  }
}

/** A kind of sheet with a layout of its own has a template of its name; the others are set block by block. */
function templateOf({ kind }: Sheet): string {
  const own = `sheets/${kind}.njk`
  return existsSync(join(templatesFolder, "includes", own)) ? own : "sheets/sheet.njk"
}

function packDocument(job: SetJob, pack: Pack<RevisedSheet>): PrintDocument {
  return document(job, { pack, sheets: pack.sheets, path: `print/${job.ref}/${pack.id}` })
}

/** Each hosted sheet alone, beside its hosted copy. */
function singleDocuments(job: SetJob): PrintDocument[] {
  return job.sheets
    .filter((sheet) => sheet.hosted)
    .map((sheet) =>
      document(job, {
        pack: { id: sheet.path, title: `sheet ${sheet.number} alone`, bound: false },
        sheets: [sheet],
        path: `site/${job.result.job.code}/${sheet.path}/sheet`,
      }),
    )
}

function document(
  job: SetJob,
  { pack, sheets, path }: { pack: PrintDocument["pack"]; sheets: readonly RevisedSheet[]; path: string },
): PrintDocument {
  const pages = sheets.map((sheet) => sheetPage(job, sheet))
  const block = { job: job.result.job, pack }
  const contents = pack.bound
    ? [
        pageStyle(contentsHead(job.result.job), {
          ...block,
          revision: job.revision,
          place: job.result.job.title,
        }),
      ]
    : []
  const rooms = [...new Set(sheets.flatMap(({ room }) => room ?? []))]
  const own = pages.map((page) => {
    const { room } = page.sheet
    const tab = room === null ? undefined : { room, index: rooms.indexOf(room), of: rooms.length }
    return pageStyle(
      { ...page.sheet, address: page.address },
      { ...block, revision: page.revision, place: page.place, tab },
    )
  })
  const styles = [...contents, ...own].join("\n")
  return {
    ref: job.ref,
    path,
    pack: { id: pack.id, title: pack.title, bound: pack.bound },
    jobTitle: job.result.job.title,
    pages,
    styles,
  }
}
