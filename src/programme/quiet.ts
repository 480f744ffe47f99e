import type { ProgrammeFile } from "../intake/schema/programme.ts"
import type { Weekday } from "../kernels/calendar/dates.ts"
import type { WorkCalendar } from "../kernels/calendar/work-calendar.ts"
import type { ElapsedHours } from "../kernels/units.ts"

const dayNames: Record<ProgrammeFile["days"][number], Weekday> = {
  mon: "monday",
  tue: "tuesday",
  wed: "wednesday",
  thu: "thursday",
  fri: "friday",
  sat: "saturday",
  sun: "sunday",
}

/**
 * Working spans by day of the week, less the quiet hours of that day where the work is noisy, and less the hours before bedtime
 * in which no solvent goes on where people sleep.
 * @param airing hours before bedtime, 0 for other work
 */
export function weekOf(
  programme: ProgrammeFile,
  { noisy, airing }: { noisy: boolean; airing: ElapsedHours },
): WorkCalendar["week"] {
  const week: Partial<Record<Weekday, string[]>> = {}
  for (const day of programme.days) {
    const spans = programme.hours.map((span) => [span.from, span.to] as const)
    const quiet = noisy ? programme.quiet.filter((each) => each.days.includes(day)) : []
    week[dayNames[day]] = [...quiet, ...beforeBed(programme.bedtime, airing)]
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

const minutesOfDay = 24 * 60

/** The clock time by which work with solvent or oil is done where people sleep. */
export function airedBy(bedtime: string, airing: ElapsedHours): string {
  const at = (minutesIn(bedtime) - airing * 60 + minutesOfDay) % minutesOfDay
  return clockOf(at)
}

/** The hours before bedtime and those after it as stretches of one day: two where bedtime is past midnight. */
function beforeBed(bedtime: string, airing: ElapsedHours): { from: string; to: string }[] {
  if (airing <= 0) return []
  const from = airedBy(bedtime, airing)
  if (from < bedtime) return [{ from, to: "24:00" }]
  return [
    { from: "00:00", to: bedtime },
    { from, to: "24:00" },
  ]
}

function minutesIn(clock: string): number {
  return Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3))
}

function clockOf(minutes: number): string {
  return [Math.floor(minutes / 60), minutes % 60].map((part) => String(part).padStart(2, "0")).join(":")
}
