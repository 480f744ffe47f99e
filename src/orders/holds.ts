import type { MoneyFile } from "../intake/schema/money.ts"
import type { ProgrammeFile } from "../intake/schema/programme.ts"
import { dayText } from "../kernels/calendar/date-text.ts"
import { addDays, weekday } from "../kernels/calendar/dates.ts"
import { addWorkingDays, isWorkingDay, type WorkCalendar } from "../kernels/calendar/work-calendar.ts"
import type { At } from "../kernels/finding.ts"
import type { IsoDate } from "../kernels/units.ts"
import type { Hold } from "../programme/programme.ts"
import type { Step } from "../trades/trade.ts"
import { type Supplier, supplierOf } from "./delivery-dates.ts"
import { stepsUsing } from "./first-use.ts"
import type { OrderLine } from "./orders.ts"

/** What holds are made of: what is ordered, how it comes, and what the client has still to choose. */
export interface HoldsGiven {
  lines: readonly OrderLine[]
  steps: readonly Step[]
  suppliers: readonly Supplier[]
  booked: ProgrammeFile["booked"]
  decisions: MoneyFile["client"]["decisions"]
  calendar: WorkCalendar
  /** The day the pack was prepared: nothing was ordered before. */
  preparedOn: IsoDate
}

/**
 * The first day on which each step that uses ordered goods may begin: they are ordered on the day the pack was prepared, or once the
 * client has chosen, and come after their lead time on a day their supplier comes, or on the day they are booked for. What lies in its
 * room first may be carried in that very day; anything else is there the working day before it is used.
 * @returns one hold for each step and product; steps that use nothing have none
 */
export function holdsOf(given: HoldsGiven): Hold[] {
  return given.lines.flatMap((line): Hold[] => {
    const { from, because, at } = arrival(line, given)
    const keys = line.uses.flatMap((use) => stepsUsing(line.product, use, given.steps))
    return [...new Set(keys)].map(({ key, stage }) => ({
      key,
      from: stage === "acclimatise" ? from : addWorkingDays(from, 1, given.calendar),
      because,
      at,
    }))
  })
}

/** True if a dated step begins before something it needs can be there. */
export function isAnyBroken(holds: readonly Hold[], startOf: (key: string) => IsoDate | undefined): boolean {
  return holds.some(({ key, from }) => {
    const start = startOf(key)
    return start !== undefined && start < from
  })
}

/** The soonest day a line can be on site, and what decides it. */
function arrival(
  { product }: OrderLine,
  { suppliers, booked, decisions, calendar, preparedOn }: HoldsGiven,
): { from: IsoDate; because: string; at: At } {
  const { id, name, lead } = product
  const booking = booked.findIndex((each) => each.product === id)
  if (booking >= 0) {
    const from = booked[booking]!.on
    const at = { file: "programme.yaml", path: ["booked", booking, "on"] }
    return { from, because: `waits for goods: ${name}, booked for ${dayText(from)}`, at }
  }
  const supplier = supplierOf(product.supplier, suppliers)
  const choice = decisions.findIndex((each) => each.product === id && each.by > preparedOn)
  const ordered = workingDayFrom(choice >= 0 ? decisions[choice]!.by : preparedOn, calendar)
  const out = supplier.leadIn === "working" ? addWorkingDays(ordered, lead, calendar) : addDays(ordered, lead)
  const from = comingDay(out, supplier, calendar)
  const days = `${lead} ${supplier.leadIn === "working" ? "working days" : "days"}`
  if (choice >= 0) {
    const { what, by } = decisions[choice]!
    return {
      from,
      because: `waits for the client’s choice by ${dayText(by)} (${what}), then ${days} until ${name} can come on ${dayText(from)}`,
      at: { file: "money.yaml", path: ["client", "decisions", choice, "by"] },
    }
  }
  return {
    from,
    because: `waits for goods: ${name}, ordered on ${dayText(ordered)}, ${days}, here on ${dayText(from)} at the soonest`,
    at: { file: "job.yaml", path: ["prepared", "on"] },
  }
}

function workingDayFrom(date: IsoDate, calendar: WorkCalendar): IsoDate {
  return isWorkingDay(date, calendar) ? date : addWorkingDays(date, 1, calendar)
}

/** A year of days is looked through for one on which the supplier comes. */
const daysLooked = 366

function comingDay(date: IsoDate, { days }: Supplier, calendar: WorkCalendar): IsoDate {
  const first = workingDayFrom(date, calendar)
  for (let day = 0; day < daysLooked; day++) {
    const on = addDays(first, day)
    if (isWorkingDay(on, calendar) && (!days || days.some((each) => weekday(on).startsWith(each)))) return on
  }
  return first
}
