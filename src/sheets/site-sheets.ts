import type { SheetModel } from "../kernels/paper.ts"
import { dayworkSheet, diarySheet } from "./day-book.ts"
import { doorsBelowSheet } from "./doors-below.ts"
import { endOfDaySheet } from "./end-of-day.ts"
import { eveningsSheet } from "./evenings.ts"
import { firstNightSheet } from "./first-night.ts"
import { tradeHandoverSheets } from "./handover-of-trades.ts"
import { heatBeforeWoodSheet } from "./heat-before-wood.ts"
import type { JobResult } from "./job-result.ts"
import { protectionSheet } from "./protection.ts"

/** Sheets of the site as a whole: the people in the house, the trades among one another, protection, and the day's books. */
export function siteSheets(result: JobResult): SheetModel[] {
  return [
    endOfDaySheet(result),
    eveningsSheet(result),
    firstNightSheet(result),
    doorsBelowSheet(result),
    heatBeforeWoodSheet(result),
    ...tradeHandoverSheets(result),
    protectionSheet(result),
    dayworkSheet(result),
    diarySheet(result),
  ].filter((sheet) => sheet !== null)
}
