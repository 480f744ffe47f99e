import { Fault } from "../kernels/fault.ts"
import { isAsIssued } from "../programme/compare.ts"
import { allSheets } from "../sheets/all-sheets.ts"
import type { JobResult } from "../sheets/job-result.ts"
import { numbered, type Sheet } from "../sheets/numbers.ts"
import { type Pack, packsOf } from "../sheets/packs.ts"
import { type Revision, revisionOf } from "./addresses.ts"
import { type Fingerprint, fingerprintOf } from "./revisions/fingerprint.ts"
import { inOrderOfIssue, type SheetHistory, sheetHistory, withChangeMarks } from "./revisions/history.ts"
import { type NumberedHistory, revisionLog } from "./revisions/log-sheet.ts"
import type { IssueRecord } from "./revisions/record.ts"

/** A job with its sheets and packs, ready to be set. */
export interface SetJob {
  ref: string
  result: JobResult
  /** Every sheet with its own revision, rows that changed marked. */
  sheets: RevisedSheet[]
  packs: Pack<RevisedSheet>[]
  /** The last issue, or a draft. */
  revision: Revision
  /** Sheets that were issued once and are no longer part of the job. */
  gone: NumberedHistory[]
}

/** A sheet as it is set: with its revision, its history and its fingerprint. */
export interface RevisedSheet extends Sheet {
  revision: Revision
  history: SheetHistory
  fingerprint: Fingerprint
  place: string
  restsInWords: string[]
}

/**
 * A job's sheets, packs and revisions.
 * @param records the job's issue records, in any order
 */
export function setJob(ref: string, worked: JobResult, records: readonly IssueRecord[] = []): SetJob {
  const issues = inOrderOfIssue(records)
  const result = withIssued(worked, issues)
  const models = allSheets(result)
  const paths = new Set(models.map((sheet) => sheet.path))
  if (paths.size !== models.length) throw new Fault(`two sheets of ${ref} carry the same number`)
  const draft = revisionOf(result.job)
  const revised = models.map((sheet) => revisedSheet(sheet, result, { issues, draft }))
  const gone = goneSheets(revised, issues, draft)
  const sheets =
    issues.length > 0 ? [...revised, logSheet(result, revised, { issues, draft, gone })] : revised
  const last = issues[issues.length - 1]
  return {
    ref,
    result,
    sheets,
    packs: [...packsOf(result, sheets), ...reprintPack(sheets, issues)],
    revision: last ? { letter: last.revision, text: last.revision, on: last.on, by: last.by } : draft,
    gone,
  }
}

/**
 * The result with the programme of the last issue whose days were others: what is issued with these very days goes on telling what moved
 * before it, so that a sheet does not change by being issued.
 */
function withIssued(result: JobResult, issues: readonly IssueRecord[]): JobResult {
  const [before] = issues
    .flatMap(({ revision, on, programme }) => (programme ? [{ revision, on, programme }] : []))
    .filter(({ programme }) => !isAsIssued(programme, result.programme))
    .slice(-1)
  return before ? { ...result, issuedBefore: before } : result
}

interface Issues {
  issues: readonly IssueRecord[]
  draft: Revision
}

function revisedSheet(sheet: Sheet, result: JobResult, { issues, draft }: Issues): RevisedSheet {
  const place = placeOf(result, sheet)
  const restsInWords = sheet.rests.map((id) => restText(id, result))
  const fingerprint = fingerprintOf(sheet, place, restsInWords)
  const history = sheetHistory(issues, sheet.number, { now: fingerprint, draft })
  const blocks = withChangeMarks(sheet.blocks, history.before)
  return { ...sheet, blocks, revision: history.revision, history, fingerprint, place, restsInWords }
}

function restText(id: string, result: JobResult): string {
  const entry = result.rules.entry(id)
  return entry.reason === undefined ? id : `${id} (overridden: ${entry.value} ${entry.unit}, ${entry.reason})`
}

function goneSheets(
  sheets: readonly Sheet[],
  issues: readonly IssueRecord[],
  draft: Revision,
): NumberedHistory[] {
  const here = new Set(sheets.map((sheet) => sheet.number))
  const titles = new Map(
    issues.flatMap((issue) => issue.sheets.map((sheet) => [sheet.number, sheet.title] as const)),
  )
  return [...titles]
    .filter(([number]) => !here.has(number))
    .map(([number, title]) => ({
      number,
      title,
      gone: true,
      history: sheetHistory(issues, number, { now: null, draft }),
    }))
}

/** The revision log carries the letter of the last issue and is not itself compared. */
function logSheet(
  result: JobResult,
  sheets: readonly RevisedSheet[],
  { issues, draft, gone }: Issues & { gone: NumberedHistory[] },
): RevisedSheet {
  const here = sheets.map(({ number, title, history }) => ({ number, title, history, gone: false }))
  const [sheet] = numbered([
    revisionLog(
      issues,
      [...here, ...gone],
      result.programme.crews.map((crew) => crew.name),
    ),
  ])
  const asLast = issues.map((issue) => ({
    revision: { letter: issue.revision, text: issue.revision, on: issue.on, by: issue.by },
    changed: [],
  }))
  const set = revisedSheet(sheet!, result, { issues: [], draft })
  const revision = asLast[asLast.length - 1]!.revision
  return { ...set, revision, history: { revision, issued: asLast, before: null } }
}

/** What must be printed again since the issue before the last, with the list of what to exchange. */
function reprintPack(sheets: readonly RevisedSheet[], issues: readonly IssueRecord[]): Pack<RevisedSheet>[] {
  const last = issues[issues.length - 1]
  if (!last || issues.length < 2) return []
  const again = sheets.filter(
    (sheet) => sheet.revision.letter === last.revision || sheet.kind === "revision-log",
  )
  return [{ id: "reprint", title: `Changed with ${last.revision}`, bound: false, sheets: again }]
}

function placeOf(result: JobResult, sheet: Sheet): string {
  const room = result.house.rooms.find((each) => each.id === sheet.room)
  return room ? `${room.id}  ${room.name}` : result.job.title
}
