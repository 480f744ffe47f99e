import type { ProgrammeFile } from "../intake/schema/programme.ts"
import { yearOf } from "../kernels/calendar/dates.ts"
import { ENGLAND_AND_WALES, holidayDates } from "../kernels/calendar/holidays.ts"
import { hasWorkingTime, type WorkCalendar } from "../kernels/calendar/work-calendar.ts"
import type { Finding } from "../kernels/finding.ts"
import type { ElapsedHours } from "../kernels/units.ts"
import { weekOf } from "./quiet.ts"

/** Years of public holidays kept ready after the start of a job. */
const yearsAhead = 3

/** The working calendar of a job by what limits the work, at a sum of `limit` flags: 0 for any work. */
export type Calendars = readonly WorkCalendar[]

/** What keeps work to some of the working hours. */
export const limit = {
  /** Loud: not in the quiet hours. */
  loud: 1,
  /** Solvent or oil where people sleep: done by so long before bedtime. */
  fumes: 2,
} as const
/** Every sum of the flags. */
const limits = [0, limit.loud, limit.fumes, limit.loud + limit.fumes]

/**
 * The calendars of a job from its days, hours, holidays, closures, quiet hours and bedtime.
 * @param airing hours before bedtime by which work with solvent or oil is done where people sleep
 */
export function calendarsOf(file: ProgrammeFile, zone: string, airing: ElapsedHours): Calendars {
  const year = yearOf(file.start)
  const holidays =
    file.holidays === "none" ? new Set<string>() : holidayDates(year, year + yearsAhead, ENGLAND_AND_WALES)
  return limits.map((flags) => ({
    zone,
    week: weekOf(file, { noisy: (flags & limit.loud) > 0, airing: flags & limit.fumes ? airing : 0 }),
    holidays,
    closures: file.closed,
    extra: [],
  }))
}

/**
 * An error where there is no hour for any work, or none for loud work or work with solvent that there is.
 * @param wanted the sums of `limit` flags that the job's steps have
 */
export function calendarFindings(
  file: ProgrammeFile,
  calendars: Calendars,
  wanted: ReadonlySet<number>,
): Finding[] {
  const lacks = (flags: number) => !hasWorkingTime(file.start, calendars[flags]!)
  if (lacks(0)) return [none("days", "The job has no working hour in three years.")]
  const found: Finding[] = []
  const has = (flags: number) => [...wanted].some((each) => (each & flags) === flags)
  if (has(limit.loud) && lacks(limit.loud))
    found.push(
      none(
        "quiet",
        "Loud work has no hour: working hours → less quiet hours → nothing left, yet there is sawing or hammering to do.",
      ),
    )
  if (has(limit.fumes) && lacks(limit.fumes))
    found.push(
      none(
        "bedtime",
        "Coats with solvent or oil have no hour: working hours → less the hours before bedtime, so that those who sleep on the storey do not breathe them → nothing left.",
      ),
    )
  const both = limit.loud + limit.fumes
  if (found.length === 0 && has(both) && lacks(both))
    found.push(
      none(
        "bedtime",
        "Loud work with solvent or oil has no hour: working hours → less quiet hours, less the hours before bedtime → nothing left.",
      ),
    )
  return found
}

function none(key: string, message: string): Finding {
  return {
    code: "no-working-time",
    severity: "error",
    at: { file: "programme.yaml", path: [key] },
    message,
    mend:
      key === "bedtime"
        ? "Begin earlier in the day, use water-borne coats, or plan nights away from the house."
        : "Shorten quiet hours or closed days, or lengthen the working day.",
  }
}
