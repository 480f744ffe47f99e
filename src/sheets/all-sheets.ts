import type { SheetModel } from "../kernels/paper.ts"
import { variationsSheet } from "./account.ts"
import { cautionsSheet } from "./cautions.ts"
import { clientSheets } from "./client.ts"
import { withWords } from "./client-sheet.ts"
import { collectionsSheet } from "./collections.ts"
import { deliveriesSheet } from "./deliveries.ts"
import { noSleepingSheets } from "./first-night.ts"
import { glanceSheet, hasWork } from "./glance.ts"
import { type JobResult, resultsIn } from "./job-result.ts"
import { numbered, type Sheet } from "./numbers.ts"
import { officeSheets } from "./office.ts"
import { programmeSheet, visitSheets } from "./programme-sheets.ts"
import { quantitiesSheet } from "./quantities.ts"
import { registerSheet } from "./register.ts"
import { sawSheet } from "./saw.ts"
import { sequenceSheet } from "./sequence.ts"
import { siteSheets } from "./site-sheets.ts"
import { snagSheet } from "./snags.ts"
import { surveySheet } from "./survey.ts"
import { surveyForm } from "./survey-form.ts"
import { storeyPlansSheet } from "./survey-storeys.ts"
import { whoIsWhereSheet } from "./who-is-where.ts"

/** Every sheet of a job, numbered, in the order in which they are bound: the job, then room by room, then client and office. */
export function allSheets(result: JobResult): Sheet[] {
  const working = workingSheets(result)
  const client = clientSheets(result)
  const register = registerSheet(result)
  const used = usedRules(result, [...working, ...client, register])
  const office = [
    ...officeSheets(result, used),
    ...variationsSheet(result, (of) => numbered(workingSheets(of))),
    register,
  ]
  return numbered(
    [...working, ...client, ...office, surveyForm(result.rules)].map(withoutDoubles).map(withWords),
  )
}

/** The sheets that the work is done from: the job's, then room by room; no money on any of them. */
function workingSheets(result: JobResult): SheetModel[] {
  const jobWide = [
    programmeSheet(result),
    whoIsWhereSheet(result),
    ...visitSheets(result),
    storeyPlansSheet(result),
    ...result.results.filter((each) => each.room === null).flatMap((each) => each.sheets),
    ...siteSheets(result),
    sawSheet(result),
    deliveriesSheet(result),
    collectionsSheet(result),
  ].filter((sheet) => sheet !== null)
  const rooms = result.house.rooms
    .filter((room) => hasWork(result, room))
    .flatMap((room) => [
      glanceSheet(result, room),
      ...noSleepingSheets(result, room),
      sequenceSheet(result, room),
      quantitiesSheet(result, room),
      ...resultsIn(result, room).flatMap((each) => each.sheets),
      cautionsSheet(result, room),
      surveySheet(result, room),
      snagSheet(result, room),
    ])
  const untouched = result.house.rooms
    .filter((room) => !hasWork(result, room))
    .map((room) => surveySheet(result, room))
  return [...jobWide, ...rooms, ...untouched]
}

/** Ids of every rulebook entry that a sheet or a calculation rests on. */
export function usedRules(result: JobResult, sheets: readonly SheetModel[]): string[] {
  const ids = [
    ...sheets.flatMap((sheet) => sheet.rests),
    ...result.results.flatMap((each) => each.work.rests),
  ]
  return [...new Set(ids)].sort()
}

function withoutDoubles(sheet: SheetModel): SheetModel {
  return { ...sheet, rests: [...new Set(sheet.rests)].sort() }
}
