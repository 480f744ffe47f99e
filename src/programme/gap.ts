import { addDays, datesBetween } from "../kernels/calendar/dates.ts"
import { isWorkingDay } from "../kernels/calendar/work-calendar.ts"
import type { Programme } from "./programme.ts"

/** Working days from the proven bound to the planned finish: 0 where the finish is proven shortest. */
export function gapDays({ bound, finish, calendar, steps }: Programme): number {
  if (bound.proven || steps.length === 0 || finish <= bound.finish) return 0
  return datesBetween(addDays(bound.finish, 1), finish).filter((date) => isWorkingDay(date, calendar)).length
}
