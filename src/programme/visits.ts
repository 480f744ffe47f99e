import { addDays } from "../kernels/calendar/dates.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import { isWorkingDay, type WorkCalendar } from "../kernels/calendar/work-calendar.ts"
import type { Finding } from "../kernels/finding.ts"
import type { IsoDate } from "../kernels/units.ts"
import type { Crew, DatedStep, Visit } from "./programme.ts"

/** Visits of each crew: working days on end, from steps in order of start; what nobody works at is no visit. */
export function visitsOf(
  steps: readonly DatedStep[],
  crews: readonly Crew[],
  calendar: WorkCalendar,
): Visit[] {
  return crews.flatMap((crew) => {
    const visits: Visit[] = []
    for (const each of steps.filter((step) => step.crew === crew.id && step.step.hours > 0)) {
      const from = clockAt(each.start, calendar.zone).date
      const to = clockAt(each.finish, calendar.zone).date
      const visit = visits[visits.length - 1]
      if (visit && from <= nextWorkingDay(visit.to, calendar)) {
        visit.keys.push(each.step.key)
        if (to > visit.to) visit.to = to
      } else visits.push({ crew: crew.id, from, to, keys: [each.step.key] })
    }
    return visits
  })
}

/** A warning for each crew that would come more often than the job allows. */
export function visitFindings(visits: readonly Visit[], crews: readonly Crew[]): Finding[] {
  return crews.flatMap((crew, index): Finding[] => {
    const count = visits.filter((visit) => visit.crew === crew.id).length
    if (!crew.visits || count <= crew.visits) return []
    return [
      {
        code: "too-many-visits",
        severity: "warning",
        at: { file: "programme.yaml", path: ["crews", index, "visits"] },
        message: `${crew.name} would come ${count} times; the job allows ${crew.visits} visits.`,
        mend: "Allow more visits, or let fewer rooms go on at once.",
      },
    ]
  })
}

function nextWorkingDay(date: IsoDate, calendar: WorkCalendar): IsoDate {
  let day = addDays(date, 1)
  while (!isWorkingDay(day, calendar)) day = addDays(day, 1)
  return day
}
