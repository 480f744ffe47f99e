import { dayText } from "../kernels/calendar/date-text.ts"
import { datesBetween } from "../kernels/calendar/dates.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import { isWorkingDay } from "../kernels/calendar/work-calendar.ts"
import type { IsoDate } from "../kernels/units.ts"
import type { DatedStep, Programme } from "../programme/programme.ts"
import type { Stage } from "../trades/stages.ts"

/** What is done at a stage, for someone who has never built. */
const stageWords: Readonly<Record<Stage, string>> = {
  prepare: "Floors and furniture are covered; rooms are checked and old parts taken out",
  "dry-out": "New plaster dries",
  mist: "The first thin coat of paint goes on new plaster",
  white: "Walls and ceilings are painted",
  tile: "Tiles are laid",
  heat: "Radiators are hung and the heating is turned on",
  deck: "The boards under the new floor are screwed down and made flat",
  acclimatise: "New floorboards come in and lie in the room to get used to its air",
  floor: "The new floor is laid",
  linings: "Door frames are fitted",
  hang: "Doors are hung",
  "second-fix": "Skirting and the trim round doors are fixed",
  fill: "Holes and joints are filled and rubbed smooth",
  woodwork: "Doors and other wood are painted or varnished",
  "last-coat": "Walls get their last coat",
  "covers-off": "Covers come off and the room is cleaned",
  oil: "The wood floor is oiled",
  nosings: "The edges of the stair are fitted",
  snag: "All is looked over and small faults are put right",
}

/** Where a trade does something else at a stage than the others. */
const tradeWords: Readonly<Record<string, string>> = {
  "electrics/prepare": "Cables and boxes already in the walls are checked",
  "plumbing/prepare": "Pipes already laid are tested",
  "plumbing/second-fix": "Shower, basin and WC are fixed",
  "electrics/second-fix": "Sockets, switches and lights are fixed",
  "tiling/fill": "The joints round the tiles are sealed",
  "electrics/last-coat": "Sockets and switches are loosened for the painter",
  "electrics/covers-off": "Sockets and switches are screwed back and tested",
}

/** One step in plain words. */
export function plainWork({ step }: DatedStep): string {
  return tradeWords[`${step.trade}/${step.stage}`] ?? stageWords[step.stage]
}

/** What a trade may cut off while it works, by trade. */
export const cutsOff: Readonly<Record<string, "water" | "power">> = { plumbing: "water", electrics: "power" }

/** Working days on which a step is worked on. */
export function workedDates({ start, finish }: DatedStep, { zone, calendar }: Programme): IsoDate[] {
  return datesBetween(clockAt(start, zone).date, clockAt(finish, zone).date).filter((date) =>
    isWorkingDay(date, calendar),
  )
}

/** Days on which nobody may walk where a step was done. */
export function wetDates({ step, finish, ready }: DatedStep, { zone }: Programme): IsoDate[] {
  return step.gate?.forbids.includes("walk")
    ? datesBetween(clockAt(finish, zone).date, clockAt(ready, zone).date)
    : []
}

/** Days in order for the reader: `Mon 1 Mar to Wed 3 Mar, Fri 5 Mar`; days on which nobody works do not part a stretch. */
export function daysText(dates: readonly IsoDate[], { calendar }: Pick<Programme, "calendar">): string {
  const sorted = [...new Set(dates)].sort()
  const stretches: [IsoDate, IsoDate][] = []
  for (const date of sorted) {
    const last = stretches[stretches.length - 1]
    const between = last ? datesBetween(last[1], date).slice(1, -1) : []
    if (last && between.every((day) => !isWorkingDay(day, calendar))) last[1] = date
    else stretches.push([date, date])
  }
  return stretches
    .map(([from, to]) => (from === to ? unbroken(from) : `${unbroken(from)} to ${unbroken(to)}`))
    .join(", ")
}

/** A day that is not parted at the end of a line. */
function unbroken(date: IsoDate): string {
  return dayText(date).replaceAll(" ", "\u00a0")
}
