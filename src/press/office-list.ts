import { dateText } from "../kernels/calendar/date-text.ts"
import { isoDate, yearOf } from "../kernels/calendar/dates.ts"
import type { IsoDate } from "../kernels/units.ts"
import { plain } from "./records/plain.ts"
import type { SetJob } from "./set-job.ts"

/** One job in the office's list, with every word it is found by. Private. */
export interface OfficeRow {
  ref: string
  title: string
  site: string
  client: string
  revision: string
  /** Day of that revision, first and last day of work. */
  on: IsoDate
  from: IsoDate
  to: IsoDate
  /** The same in words. */
  onText: string
  workText: string
  packs: { file: string; title: string }[]
  records: string[]
  /** Words to be searched in: small letters without accents. */
  find: string
}

/**
 * The row of a job.
 * @param records names of the files beside its packs
 */
export function officeRow(job: SetJob, records: readonly string[]): OfficeRow {
  const { result, revision } = job
  const { start, finish } = result.programme
  return {
    ref: job.ref,
    title: result.job.title,
    site: result.job.site,
    client: result.job.client,
    revision: revision.text,
    on: revision.on,
    from: start,
    to: finish,
    onText: dateText(revision.on),
    workText: `${dateText(start)} to ${dateText(finish)}`,
    packs: job.packs.map(({ id, title }) => ({ file: `${id}.pdf`, title })),
    records: [...records],
    find: findable(wordsOf(job)),
  }
}

/** Rows in the order of the list: the last to be worked on first. */
export function inListOrder(rows: readonly OfficeRow[]): OfficeRow[] {
  return [...rows].sort((a, b) => (a.to === b.to ? (a.ref < b.ref ? -1 : 1) : a.to < b.to ? 1 : -1))
}

/** The rows as a script: a list opened from a folder may run scripts but read no file. */
export function officeScript(rows: readonly OfficeRow[]): string {
  return `globalThis.officeRows = ${JSON.stringify(plain(inListOrder(rows)))}\n`
}

/** Text as it is searched: small letters, accents off, each word once. */
export function findable(words: readonly string[]): string {
  const folded = words.join(" ").normalize("NFD").replace(/\p{M}/gu, "").toLowerCase()
  return [...new Set(folded.split(/\s+/))].filter(Boolean).join(" ")
}

function wordsOf({ ref, result, sheets, revision }: SetJob): string[] {
  const { job, house, programme, orders, moneyFile } = result
  return [
    ref,
    job.code,
    job.title,
    job.site,
    job.client,
    ...job.notes,
    revision.text,
    ...[revision.on, ...monthsBetween(programme.start, programme.finish)].flatMap(wordsOfDay),
    ...house.rooms.flatMap(({ id, name }) => [id, name]),
    ...house.doors.map(({ id }) => id),
    ...result.trades.map(({ title }) => title),
    ...programme.crews.map(({ name }) => name),
    ...orders.lines.flatMap(({ product }) => [product.id, product.name, product.supplier]),
    ...(moneyFile?.client.decisions ?? []).map(({ what }) => what),
    ...(moneyFile?.client.notes ?? []),
    ...sheets.flatMap(({ number, title }) => [number, title]),
    ...result.findings.map(({ message }) => message),
  ]
}

/** Both days, and the first of each month from one to the other. */
function monthsBetween(from: IsoDate, to: IsoDate): IsoDate[] {
  const monthOf = (day: IsoDate) => yearOf(day) * 12 + Number(day.slice(5, 7)) - 1
  const count = Math.max(monthOf(to) - monthOf(from) + 1, 0)
  const firsts = Array.from({ length: count }, (_, index) => {
    const at = monthOf(from) + index
    return isoDate(Math.floor(at / 12), (at % 12) + 1, 1)
  })
  return [from, ...firsts, to]
}

const longMonth = new Intl.DateTimeFormat("en-GB", { month: "long", timeZone: "UTC" })

function wordsOfDay(day: IsoDate): string[] {
  return [day, day.slice(0, 7), dateText(day), longMonth.format(new Date(day))]
}
