import { dayText } from "../kernels/calendar/date-text.ts"
import { datesBetween } from "../kernels/calendar/dates.ts"
import { clockAt, instantAt } from "../kernels/calendar/instant.ts"
import { spansOn } from "../kernels/calendar/work-calendar.ts"
import type { Row, SheetModel } from "../kernels/paper.ts"
import type { IsoDate } from "../kernels/units.ts"
import type { DatedStep, Programme } from "../programme/programme.ts"
import type { JobResult } from "./job-result.ts"

/** Who is in which room on which day: one line a working day, week by week, with the rooms left to dry. */
export function whoIsWhereSheet({ programme }: JobResult): SheetModel | null {
  if (programme.steps.length === 0) return null
  const dates = datesBetween(programme.start, programme.finish).filter((date) => isBusy(date, programme))
  const rows = dates.map((date) => dayRow(date, programme))
  return {
    kind: "who-is-where",
    title: "Who is where",
    purpose: "Find the day: which crew goes to which room from when, and which rooms are left to dry.",
    room: null,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "landscape",
    datum: null,
    blocks: [
      {
        kind: "table",
        caption: "Rooms by day and crew",
        columns: [
          { label: "Day", width: 12, as: "figure" },
          ...programme.crews.map((crew) => ({ label: crew.name, width: 20 })),
          { label: "Left to dry, all day", width: 14 },
        ],
        rows,
        note: "Times are when the crew first goes into the room that day; without a time it goes on from the day before.",
      },
    ],
    rests: [],
  }
}

function isBusy(date: IsoDate, programme: Programme): boolean {
  return programme.steps.some((each) => each.step.hours > 0 && isWorked(each, date, programme))
}

function dayRow(date: IsoDate, programme: Programme): Row {
  const cells = programme.crews.map((crew) =>
    roomsOf(
      programme.steps.filter(
        (each) => each.crew === crew.id && each.step.hours > 0 && isWorked(each, date, programme),
      ),
      date,
      programme.zone,
    ),
  )
  return { cells: [dayText(date), ...cells, drying(date, programme)] }
}

/** True if any of the step's time lies in working time of that day. */
function isWorked({ start, finish }: DatedStep, date: IsoDate, { calendar }: Programme): boolean {
  return spansOn(date, calendar).some((span) => span.start < finish && start < span.end)
}

function roomsOf(steps: readonly DatedStep[], date: IsoDate, zone: string): string {
  const first = new Map<string, string>()
  for (const each of steps) {
    const room = each.step.room ?? "House"
    const { date: day, time } = clockAt(each.start, zone)
    if (!first.has(room)) first.set(room, day === date ? `${room}\u00a0${time}` : room)
  }
  return [...first.values()].join(", ")
}

/** Rooms in which something dries through the whole working day while nobody works there. */
function drying(date: IsoDate, { steps, zone, calendar }: Programme): string {
  const spans = spansOn(date, calendar)
  const from = spans[0]?.start ?? instantAt(date, "00:00", zone)
  const to = spans[spans.length - 1]?.end ?? instantAt(date, "24:00", zone)
  const rooms = new Set(
    steps.flatMap((each) =>
      each.step.room && each.ready > each.finish && each.finish <= from && each.ready >= to
        ? [each.step.room]
        : [],
    ),
  )
  for (const each of steps)
    if (each.step.room && each.step.hours > 0 && each.start < to && each.finish > from)
      rooms.delete(each.step.room)
  return [...rooms].join(", ")
}
