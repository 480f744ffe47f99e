import { dateText } from "../../kernels/calendar/date-text.ts"
import type { Sheet } from "../../sheets/numbers.ts"
import type { Revision } from "../addresses.ts"
import { copyText } from "../revisions/revision-pages.ts"
import type { RevisedSheet, SetJob } from "../set-job.ts"
import { type HostedDay, hostedDays } from "./days.ts"
import type { KeptJob } from "./kept-copy.ts"
import { type TimerChoice, timerData } from "./timer-data.ts"

/** A sheet as a link to it names it. */
export interface SheetLink {
  number: string
  path: string
  title: string
  purpose: string
}

/** Sheets of a job's hub under one heading. */
export interface SheetGroup {
  /** Name of its place on the page. */
  id: string
  title: string
  sheets: SheetLink[]
}

/** A job as its own pages show it. */
export interface HostedJob extends KeptJob {
  ref: string
  title: string
  site: string
  revision: Revision
  revisionOn: string
  /** The issue the pages were written with, in words. */
  copy: string
  /** Every published sheet once: the job's, then room by room. */
  groups: SheetGroup[]
  /** The same sheets again by trade. */
  trades: SheetGroup[]
  days: HostedDay[]
  timer: { data: string; choices: TimerChoice[] }
}

/** What the pages of a job that are no sheets show. */
export function hostedJob(job: SetJob): HostedJob {
  const { result } = job
  const rooms = new Map(result.house.rooms.map((room) => [room.id, room.name]))
  const sequenceOf = (room: string) =>
    hostedOf(job).find((sheet) => sheet.kind === "sequence" && sheet.room === room)?.path ?? null
  return {
    ref: job.ref,
    code: result.job.code,
    zone: result.job.zone,
    letters: Object.fromEntries(job.sheets.map(({ path, revision }) => [path, revision.letter]).sort()),
    title: result.job.title,
    site: result.job.site,
    revision: job.revision,
    revisionOn: dateText(job.revision.on),
    copy: copyText(job),
    groups: groupsOf(job),
    trades: tradesOf(job),
    days: hostedDays(result.programme, rooms, sequenceOf),
    timer: timerData(result),
  }
}

/** Where a reader may go from a sheet, and what a report on it is headed with. */
export interface SheetAround {
  zone: string
  copy: string
  before: SheetLink | null
  after: SheetLink | null
  room: { id: string; title: string } | null
  trade: { id: string; title: string } | null
  /** The beginning of a message about the sheet. */
  report: { subject: string; body: string }
}

/** The neighbours of a published sheet, in the order of the hub. */
export function aroundSheet(job: SetJob, sheet: RevisedSheet): SheetAround {
  const groups = groupsOf(job)
  const all = groups.flatMap(({ sheets }) => sheets)
  const at = all.findIndex(({ path }) => path === sheet.path)
  const group = sheet.room === null ? undefined : groups.find(({ id }) => id === roomPlace(sheet.room!))
  const trade = tradesOf(job).find(({ sheets }) => sheets.some(({ path }) => path === sheet.path))
  const { title, code } = job.result.job
  return {
    zone: job.result.job.zone,
    copy: copyText(job),
    before: all[at - 1] ?? null,
    after: all[at + 1] ?? null,
    room: group ? { id: group.id, title: group.title } : null,
    trade: trade ? { id: trade.id, title: trade.title } : null,
    report: {
      subject: `Problem with sheet ${sheet.number}, revision ${sheet.revision.text}`,
      body: `Sheet ${sheet.number} ${sheet.title}, revision ${sheet.revision.text}, ${dateText(sheet.revision.on)}\n${title} (${code})\n\nWhat the sheet says:\n\nWhat is found on site:\n\nFrom:\n`,
    },
  }
}

function hostedOf(job: SetJob): RevisedSheet[] {
  return job.sheets.filter((sheet) => sheet.hosted)
}

function groupsOf(job: SetJob): SheetGroup[] {
  const hosted = hostedOf(job)
  return [
    { id: "the-job", title: "The job", sheets: hosted.filter((sheet) => sheet.room === null).map(linkTo) },
    ...job.result.house.rooms.map((room) => ({
      id: roomPlace(room.id),
      title: `${room.id} ${room.name}`,
      sheets: hosted.filter((sheet) => sheet.room === room.id).map(linkTo),
    })),
  ].filter((group) => group.sheets.length > 0)
}

function tradesOf(job: SetJob): SheetGroup[] {
  const hosted = hostedOf(job)
  return job.result.trades
    .map(({ id, title }) => ({
      id: `trade-${id}`,
      title,
      sheets: hosted.filter((sheet) => sheet.trade === id).map(linkTo),
    }))
    .filter((group) => group.sheets.length > 0)
}

function roomPlace(room: string): string {
  return `room-${room.toLowerCase()}`
}

function linkTo({ number, path, title, purpose }: Sheet): SheetLink {
  return { number, path, title, purpose }
}
