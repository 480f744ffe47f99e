import type { ProgrammeFile } from "../intake/schema/programme.ts"
import type { Weekday } from "../kernels/calendar/dates.ts"
import type { WorkCalendar } from "../kernels/calendar/work-calendar.ts"

const dayNames: Record<ProgrammeFile["days"][number], Weekday> = {
  mon: "monday",
  tue: "tuesday",
  wed: "wednesday",
  thu: "thursday",
  fri: "friday",
  sat: "saturday",
  sun: "sunday",
}

/** Working spans by day of the week, less the quiet hours of that day where the work is noisy. */
export function weekOf(programme: ProgrammeFile, noisy: boolean): WorkCalendar["week"] {
  const week: Partial<Record<Weekday, string[]>> = {}
  for (const day of programme.days) {
    const spans = programme.hours.map((span) => [span.from, span.to] as const)
    const quiet = noisy ? programme.quiet.filter((each) => each.days.includes(day)) : []
    week[dayNames[day]] = quiet
      .reduce((left, each) => left.flatMap((span) => without(span, each)), spans)
      .map(([from, to]) => `${from}-${to}`)
  }
  return week
}

function without(
  [from, to]: readonly [string, string],
  quiet: { from: string; to: string },
): (readonly [string, string])[] {
  if (quiet.to <= from || quiet.from >= to) return [[from, to]]
  const left: (readonly [string, string])[] = []
  if (quiet.from > from) left.push([from, quiet.from])
  if (quiet.to < to) left.push([quiet.to, to])
  return left
}
