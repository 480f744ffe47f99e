import type { SheetModel } from "../kernels/paper.ts"
import { aftercareSheet } from "./client-aftercare.ts"
import { choicesSheet } from "./client-choices.ts"
import { coverSheet } from "./client-cover.ts"
import { handoverSheet } from "./client-handover.ts"
import { paymentsSheet, priceSheet } from "./client-price.ts"
import { roomsSheet } from "./client-rooms.ts"
import { scheduleSheet } from "./client-schedule.ts"
import { termsSheet } from "./client-terms.ts"
import { clientVariationsSheet } from "./client-variations.ts"
import { handoverRecord } from "./handover-record.ts"
import type { JobResult } from "./job-result.ts"

/**
 * The client's sheets in the order they are read: cover, weeks, rooms, choices, what was agreed, price, payments, changes, handover,
 * aftercare. None of them is published; none shows a rate of pay or a margin.
 */
export function clientSheets(result: JobResult): SheetModel[] {
  const sheets = [
    scheduleSheet(result),
    roomsSheet(result),
    ...choicesSheet(result),
    termsSheet(result),
    ...priceSheet(result),
    ...paymentsSheet(result),
    ...clientVariationsSheet(result),
    handoverSheet(result),
    handoverRecord(result),
    aftercareSheet(result),
  ].filter((sheet) => sheet !== null)
  return [coverSheet(result, sheets), ...sheets]
}
