import { dateText } from "../../kernels/calendar/date-text.ts"
import { datesBetween } from "../../kernels/calendar/dates.ts"
import { clockAt, instantAt } from "../../kernels/calendar/instant.ts"
import { spansOn } from "../../kernels/calendar/work-calendar.ts"
import type { IsoDate } from "../../kernels/units.ts"
import type { DatedStep, Programme } from "../../programme/programme.ts"

/** One day of work for a phone: who goes where, and what is left to dry. */
export interface HostedDay {
  date: IsoDate
  title: string
  work: { crew: string; room: string; roomName: string; sheet: string | null; lines: string[] }[]
  drying: string[]
}

/**
 * The days on which anybody works.
 * @param rooms names of the rooms by id
 * @param sequenceOf address of a room's order of work below the job, or null where none is published
 */
export function hostedDays(
  programme: Programme,
  rooms: ReadonlyMap<string, string>,
  sequenceOf: (room: string) => string | null,
): HostedDay[] {
  if (programme.steps.length === 0) return []
  return datesBetween(programme.start, programme.finish).flatMap((date) => {
    const worked = programme.steps.filter(
      (each) => each.step.hours > 0 && inWorkingTime(each, date, programme),
    )
    if (worked.length === 0) return []
    const stretches = new Map<string, DatedStep[]>()
    for (const each of worked) {
      const key = `${each.crew} ${each.step.room ?? ""}`
      stretches.set(key, [...(stretches.get(key) ?? []), each])
    }
    const work = [...stretches.values()].map((steps) => {
      const room = steps[0]!.step.room
      return {
        crew: programme.crews.find(({ id }) => id === steps[0]!.crew)?.name ?? steps[0]!.crew,
        room: room ?? "House",
        roomName: room ? (rooms.get(room) ?? "") : "",
        sheet: room ? sequenceOf(room) : null,
        lines: steps.map((each) => lineOf(each, date, programme.zone)),
      }
    })
    return [{ date, title: dateText(date), work, drying: dryingOn(date, programme, worked) }]
  })
}

function lineOf({ step, start }: DatedStep, date: IsoDate, zone: string): string {
  const clock = clockAt(start, zone)
  return clock.date === date ? `${clock.time} ${step.title}` : `goes on: ${step.title}`
}

function inWorkingTime({ start, finish }: DatedStep, date: IsoDate, { calendar }: Programme): boolean {
  return spansOn(date, calendar).some((span) => span.start < finish && start < span.end)
}

/** What dries through that whole day, a line a step. */
function dryingOn(date: IsoDate, { steps, zone }: Programme, worked: readonly DatedStep[]): string[] {
  const from = instantAt(date, "00:00", zone)
  const busy = new Set(worked.map(({ step }) => step.room))
  const lines = steps.flatMap(({ step, finish, ready }) => {
    if (!step.room || !step.gate || finish > from || ready <= from || busy.has(step.room)) return []
    const { date: day, time } = clockAt(ready, zone)
    return [`${step.room}: ${step.gate.process}, until ${dateText(day)} ${time}`]
  })
  return [...new Set(lines)]
}
