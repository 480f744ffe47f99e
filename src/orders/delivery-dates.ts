import type { ProductsFile } from "../intake/schema/products.ts"
import { addDays, weekday } from "../kernels/calendar/dates.ts"
import { addWorkingDays, isWorkingDay, type WorkCalendar } from "../kernels/calendar/work-calendar.ts"
import type { IsoDate } from "../kernels/units.ts"

/** How a supplier's goods come. */
export type Supplier = ProductsFile["suppliers"][number]

/** The first and the last day on which one line may come. */
export interface Window {
  earliest: IsoDate
  latest: IsoDate
}

/** Delivered on any working day, lead times in calendar days. */
export function supplierOf(name: string, suppliers: readonly Supplier[]): Supplier {
  return (
    suppliers.find((each) => each.supplier === name) ?? {
      supplier: name,
      leadIn: "calendar",
      collect: false,
    }
  )
}

/** The last working day before a date. */
export function workingDayBefore(date: IsoDate, calendar: WorkCalendar): IsoDate {
  return addWorkingDays(date, -1, calendar)
}

/** The date itself if it is a working day, or the last one before it. */
export function workingDayUpTo(date: IsoDate, calendar: WorkCalendar): IsoDate {
  return isWorkingDay(date, calendar) ? date : workingDayBefore(date, calendar)
}

/**
 * The last day to order what must come on a day: back by the lead time, in calendar days or in working days as the supplier counts, and
 * on a working day.
 */
export function orderBy(
  comes: IsoDate,
  lead: number,
  { leadIn }: Pick<Supplier, "leadIn">,
  calendar: WorkCalendar,
): IsoDate {
  if (leadIn === "working") return addWorkingDays(comes, -lead, calendar)
  return workingDayUpTo(addDays(comes, -lead), calendar)
}

/**
 * The days on which one supplier's lines come: as few drops as their windows allow. Proven least: lines taken in order of their last
 * day, a drop on the last day of each that none serves yet (a point in every interval); each line then comes with the latest drop
 * that it may. Where a supplier never comes in a window, the line's last working day stands, whatever the weekday.
 * @returns the day of each window, in the order given
 */
export function dropDates(
  windows: readonly Window[],
  { days }: Pick<Supplier, "days">,
  calendar: WorkCalendar,
): IsoDate[] {
  const comes = (date: IsoDate) =>
    isWorkingDay(date, calendar) && (!days || days.some((day) => weekday(date).startsWith(day)))
  const ends = windows.map(({ earliest, latest }) => {
    for (let day = latest; day >= earliest; day = addDays(day, -1)) if (comes(day)) return day
    return workingDayUpTo(latest, calendar)
  })
  const inOrder = windows.map((_, index) => index).sort((a, b) => (ends[a]! < ends[b]! ? -1 : 1))
  const drops: IsoDate[] = []
  const serves = (drop: IsoDate, index: number) => windows[index]!.earliest <= drop && drop <= ends[index]!
  for (const index of inOrder) if (!drops.some((drop) => serves(drop, index))) drops.push(ends[index]!)
  return windows.map((_, index) => {
    const served = drops.filter((drop) => serves(drop, index)).sort()
    return served[served.length - 1] ?? ends[index]!
  })
}
