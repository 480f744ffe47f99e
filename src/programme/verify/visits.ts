import { datesBetween } from "../../kernels/calendar/dates.ts"
import { clockAt } from "../../kernels/calendar/instant.ts"
import { isWorkingDay } from "../../kernels/calendar/work-calendar.ts"
import type { Checked } from "../programme.ts"

/** Visits counted day by day; the limits kept or told; the finish, the bound, the first night and the labour. */
export function visitsBroken({ programme, file }: Checked): string[] {
  const { steps, zone, calendar } = programme
  const found: string[] = []
  if (steps.length === 0) return found
  const day = (moment: (typeof steps)[number]["start"]) => clockAt(moment, zone).date
  for (const crew of file.crews) {
    const own = steps.filter((each) => each.crew === crew.id && each.step.hours > 0)
    const there = new Set(own.flatMap((each) => datesBetween(day(each.start), day(each.finish))))
    const last = [...there].sort().at(-1) ?? file.start
    const first = [...there].sort()[0] ?? file.start
    const days = datesBetween(first, last).filter((date) => there.has(date) || isWorkingDay(date, calendar))
    const count = days.filter((date, at) => there.has(date) && !(at > 0 && there.has(days[at - 1]!))).length
    const told = programme.visits.filter((visit) => visit.crew === crew.id).length
    if (count !== told) found.push(`${crew.id}: ${count} visits, ${told} told`)
    const warned = programme.findings.some(
      (each) => each.code === "too-many-visits" && each.message.includes(crew.name),
    )
    if (crew.visits && count > crew.visits !== warned)
      found.push(`${crew.id}: limit of visits not told right`)
  }
  const finish = steps
    .map((each) => day(each.finish))
    .sort()
    .at(-1)
  if (programme.finish !== finish) found.push(`finish ${programme.finish} told, ${finish} dated`)
  if (programme.bound.proven && programme.finish > programme.bound.finish) found.push("proof told wrongly")
  if (file.progress.length === 0 && programme.bound.finish > programme.finish)
    found.push("the bound lies after the finish")
  const slept = programme.firstNight
  if (slept?.after.some((key) => steps.some((each) => each.step.key === key && day(each.ready) > slept.on)))
    found.push("first night before its conditions")
  return found
}
