import type { ProgrammeFile } from "../intake/schema/programme.ts"
import { addDays } from "../kernels/calendar/dates.ts"
import { clockAt, instantAt } from "../kernels/calendar/instant.ts"
import { spansOn } from "../kernels/calendar/work-calendar.ts"
import type { Finding } from "../kernels/finding.ts"
import type { Calendars } from "./calendars.ts"
import type { Placeable, Placing } from "./place.ts"
import type { DatedStep, Move } from "./programme.ts"
import type { UnitPlan } from "./units.ts"
import type { WorkTable } from "./work-table.ts"

type Reported = ProgrammeFile["progress"][number]

/** Units that are done or begun, and the moment from which the rest can still be dated. */
export interface Progress {
  pinned: Placeable["pinned"]
  opening: number
  findings: Finding[]
}

/** Actual days typed in, laid on the plan as it was first dated: a unit is begun with its first step and done with all of them. */
export function progressOf(
  file: ProgrammeFile,
  { plan, tables, opening }: Placeable,
  first: Placing,
  calendars: Calendars,
): Progress {
  const { zone } = calendars[0]!
  const calm = tables[0]!
  const pinned = new Map<number, { start: number; finish: number }>()
  const known = new Set(plan.units.flatMap((unit) => unit.steps.map((step) => step.key)))
  let from = opening
  for (const { started, finished } of file.progress) {
    if (started) from = Math.max(from, instantAt(started, "00:00", zone))
    if (finished) from = Math.max(from, instantAt(addDays(finished, 1), "00:00", zone))
  }
  plan.units.forEach((unit, index) => {
    const own = unit.steps.map((step) => file.progress.find((each) => each.step === step.key))
    const told = own.filter((each) => each !== undefined)
    if (told.length === 0) return
    const days = told
      .flatMap((each) => [each.started, each.finished].filter((day) => day !== undefined))
      .sort()
    const isDone = own.every((each) => each?.finished)
    const hours = unit.hours / first.people[index]!
    const finish = isDone ? endOf(days[days.length - 1]!, calendars) : 0
    const begun = told.some((each) => each.started) || !isDone
    const start = begun ? startOf(days[0]!, calm, zone) : Math.max(opening, calm.subtract(finish, hours))
    pinned.set(index, {
      start,
      finish: isDone ? Math.max(start, finish) : Math.max(calm.add(start, hours), from),
    })
  })
  return {
    pinned,
    opening: from,
    findings: file.progress.flatMap((each, index) => unknown(each, index, known)),
  }
}

function startOf(day: string, calm: WorkTable, zone: string): number {
  return calm.next(instantAt(day, "00:00", zone))
}

function endOf(day: string, calendars: Calendars): number {
  const calm = calendars[0]!
  const spans = spansOn(day, calm)
  return spans[spans.length - 1]?.end ?? instantAt(day, "24:00", calm.zone)
}

function unknown({ step }: Reported, index: number, known: ReadonlySet<string>): Finding[] {
  if (known.has(step)) return []
  return [
    {
      code: "progress-unknown-step",
      severity: "warning",
      at: { file: "programme.yaml", path: ["progress", index, "step"] },
      message: `There is no step "${step}" in this job.`,
      mend: "Take the key from the column step of programme.csv.",
    },
  ]
}

/** Steps whose day of finish has changed since they were first dated, in order of their new start, and why. */
export function movesOf(
  first: readonly DatedStep[],
  now: readonly DatedStep[],
  told: readonly Reported[],
  zone: string,
): Move[] {
  const day = (step: DatedStep) => clockAt(step.finish, zone).date
  const before = new Map(first.map((each) => [each.step.key, each]))
  return now.flatMap((each): Move[] => {
    const was = before.get(each.step.key)
    if (!was || day(was) === day(each)) return []
    const report = told.find((one) => one.step === each.step.key)
    const because = report ? (report.finished ? "as done" : "as begun") : each.because
    return [{ key: each.step.key, was: day(was), now: day(each), because }]
  })
}

/** True if every unit of the plan could be pinned: nothing is left to date. */
export function allDone(plan: UnitPlan, progress: Progress): boolean {
  return progress.pinned.size === plan.units.length
}
