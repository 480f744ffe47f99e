import type { ProgrammeFile } from "../intake/schema/programme.ts"
import { yearOf } from "../kernels/calendar/dates.ts"
import { ENGLAND_AND_WALES, holidayDates } from "../kernels/calendar/holidays.ts"
import { hasWorkingTime, type WorkCalendar } from "../kernels/calendar/work-calendar.ts"
import type { Finding } from "../kernels/finding.ts"
import { weekOf } from "./quiet.ts"

/** Years of public holidays kept ready after the start of a job. */
const yearsAhead = 3

/** The working calendar of a job: for any work, and for work that is loud (less the quiet hours). */
export interface Calendars {
  calm: WorkCalendar
  noisy: WorkCalendar
}

/** Both calendars of a job from its days, hours, holidays, closures and quiet hours. */
export function calendarsOf(file: ProgrammeFile, zone: string): Calendars {
  const year = yearOf(file.start)
  const holidays =
    file.holidays === "none" ? new Set<string>() : holidayDates(year, year + yearsAhead, ENGLAND_AND_WALES)
  const calendar = (noisy: boolean): WorkCalendar => ({
    zone,
    week: weekOf(file, noisy),
    holidays,
    closures: file.closed,
    extra: [],
  })
  return { calm: calendar(false), noisy: calendar(true) }
}

/** An error where there is no hour for any work, or none for loud work that there is. */
export function calendarFindings(
  file: ProgrammeFile,
  { calm, noisy }: Calendars,
  isLoud: boolean,
): Finding[] {
  if (!hasWorkingTime(file.start, calm)) return [none("days", "The job has no working hour in three years.")]
  if (!isLoud || hasWorkingTime(file.start, noisy)) return []
  return [
    none(
      "quiet",
      "Loud work has no hour: working hours → less quiet hours → nothing left, yet there is sawing or hammering to do.",
    ),
  ]
}

function none(key: string, message: string): Finding {
  return {
    code: "no-working-time",
    severity: "error",
    at: { file: "programme.yaml", path: [key] },
    message,
    mend: "Shorten quiet hours or closed days, or lengthen the working day.",
  }
}
