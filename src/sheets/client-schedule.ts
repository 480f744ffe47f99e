import { dateText, dayText, momentText } from "../kernels/calendar/date-text.ts"
import { mondayOf } from "../kernels/calendar/dates.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import type { Row, SheetModel } from "../kernels/paper.ts"
import type { IsoDate } from "../kernels/units.ts"
import type { DatedStep, Programme } from "../programme/programme.ts"
import { clientSheet } from "./client-sheet.ts"
import type { JobResult } from "./job-result.ts"
import { daysText, plainWork, wetDates, workedDates } from "./plain-work.ts"

/** The schedule of works by week in plain words: what is done, where and on which days, and where nobody may walk. */
export function scheduleSheet(result: JobResult): SheetModel {
  const { programme } = result
  const { start, finish, firstNight } = programme
  const night = firstNight
    ? [
        `Nobody sleeps in the new rooms before the evening of ${dateText(firstNight.on)}; the builder tells you in writing when it may be.`,
      ]
    : []
  return clientSheet(
    {
      kind: "client-schedule",
      title: "Schedule of works",
      purpose: "What happens in which week, in which rooms, and where nobody may walk.",
    },
    [
      {
        kind: "text",
        as: "lead",
        paragraphs: [
          `Work starts on ${dateText(start)} and is planned to finish on ${dateText(finish)}.`,
          ...night,
        ],
      },
      {
        kind: "table",
        caption: "Week by week",
        columns: [
          { label: "What is done", width: 46 },
          { label: "Rooms, and on which days", width: 54 },
        ],
        rows: weeksOf(programme).flatMap((week) => weekRows(week, result)),
        note: "Days can move when something dries slowly or a delivery is late; you then get this sheet again with a new letter beside its number, and throw the old one away. Drying goes on through nights and weekends.",
      },
      { kind: "sign", roles: ["Client", "Builder"] },
    ],
  )
}

/** Mondays of every week in which something is worked on, drying or wet, in order. */
function weeksOf(programme: Programme): IsoDate[] {
  const dates = programme.steps.flatMap((each) => [
    ...workedDates(each, programme),
    ...wetDates(each, programme),
  ])
  return [...new Set(dates.map(mondayOf))].sort()
}

function weekRows(week: IsoDate, result: JobResult): Row[] {
  const { programme } = result
  const here = (dates: readonly IsoDate[]) => dates.filter((date) => mondayOf(date) === week)
  const worked = programme.steps.filter((each) => here(workedDates(each, programme)).length > 0)
  const what = [...new Set(worked.map(plainWork))]
  const rows = what.map((words): Row => {
    const own = worked.filter((each) => plainWork(each) === words)
    return { cells: [words, roomsAndDays(own, here, result)] }
  })
  const wet = programme.steps.filter((each) => here(wetDates(each, programme)).length > 0)
  const keepOut: Row[] =
    wet.length > 0
      ? [{ as: "total", cells: ["Nobody walks here: the floor is wet", wetText(wet, result)] }]
      : []
  return [{ as: "group", cells: [`Week of ${dayText(week)}`, ""] }, ...rows, ...keepOut]
}

function roomsAndDays(
  steps: readonly DatedStep[],
  here: (dates: readonly IsoDate[]) => IsoDate[],
  result: JobResult,
): string {
  const { programme } = result
  const byDays = new Map<string, string[]>()
  for (const name of [...new Set(steps.map((each) => nameOf(each, result)))]) {
    const own = steps.filter((each) => nameOf(each, result) === name)
    const days = daysText(
      own.flatMap((each) => here(workedDates(each, programme))),
      programme,
    )
    byDays.set(days, [...(byDays.get(days) ?? []), name])
  }
  return [...byDays].map(([days, names]) => `${listText(names)}: ${days}`).join("; ")
}

/** Where nobody may walk and from when until when, the stretches of one room joined where they meet. */
export function wetText(steps: readonly DatedStep[], result: JobResult): string {
  const { zone } = result.programme
  const names = [...new Set(steps.map((each) => nameOf(each, result)))]
  return names
    .map((name) => {
      const own = steps.filter((each) => nameOf(each, result) === name).sort((a, b) => a.finish - b.finish)
      const stretches: { from: DatedStep["finish"]; to: DatedStep["ready"] }[] = []
      for (const { finish, ready } of own) {
        const last = stretches[stretches.length - 1]
        if (last && finish <= last.to) last.to = Math.max(ready, last.to) as typeof ready
        else stretches.push({ from: finish, to: ready })
      }
      const spans = stretches.map(({ from, to }) => {
        const sameDay = clockAt(from, zone).date === clockAt(to, zone).date
        return `${momentText(from, zone)} until ${sameDay ? clockAt(to, zone).time : momentText(to, zone)}`
      })
      return `${name}: ${spans.join(", ")}`
    })
    .join("; ")
}

/** The room's name, or the house where a step is in none. */
export function nameOf({ step }: DatedStep, { house }: JobResult): string {
  return house.rooms.find((room) => room.id === step.room)?.name ?? "the house"
}

/** Words joined for the reader: `a, b and c`. */
export function listText(words: readonly string[]): string {
  if (words.length < 2) return words.join("")
  return `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`
}
