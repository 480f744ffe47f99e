import { datesBetween } from "../kernels/calendar/dates.ts"
import { clockAt, type Instant } from "../kernels/calendar/instant.ts"
import { spansOn } from "../kernels/calendar/work-calendar.ts"
import type { IsoDate } from "../kernels/units.ts"
import type { Step } from "../trades/trade.ts"
import type { DatedStep, Programme, Site } from "./programme.ts"
import { type WayOut, wayOut } from "./way-out.ts"
import type { Ways } from "./ways.ts"

/** A room with a smoke or heat alarm on its ceiling. */
export interface AlarmPlace {
  room: string
  /** Key of the step that fits it; null for one that is there already. */
  fittedBy: string | null
}

/** An alarm under a dust cover on one day: from the first dust near it to the end of the last. */
export interface AlarmCover {
  room: string
  on: Instant
  off: Instant
  /** Keys of the steps that make the dust. */
  dust: string[]
}

/** A doorway along a way out, as it stands in the evening. */
export interface EveningDoorway {
  door: string
  /** `old`: the leaf that hung there; `new`: hung during the work; `today`: hung that day; `none`: no leaf. */
  leaf: "old" | "new" | "today" | "none"
}

/** What the end of one working day leaves to the people in the house. */
export interface Evening {
  date: IsoDate
  /** Last moment of working time. */
  ends: Instant
  /** Rooms slept in that night. */
  slept: string[]
  doorways: EveningDoorway[]
  covers: AlarmCover[]
  /** Floors nobody walks on past the end of work. */
  wet: { key: string; room: string; until: Instant }[]
  /** Work that goes on another day: what it leaves open, loose or off must be made safe. */
  overnight: DatedStep[]
}

/** What evenings are worked out from. */
export interface EveningsGiven {
  programme: Programme
  site: Site
  ways: Ways
  alarms: readonly AlarmPlace[]
  /** Doorways that dust passes on its way to an alarm. */
  reach: number
}

/** Every evening of an occupied house's programme, in order; none where nobody lives in it. */
export function eveningsOf(given: EveningsGiven): Evening[] {
  const { programme, site } = given
  if (!site.occupied || programme.steps.length === 0) return []
  return datesBetween(programme.start, programme.finish).flatMap((date) => {
    const spans = spansOn(date, programme.calendar)
    const worked = programme.steps.filter(
      ({ start, finish }) => start < finish && spans.some((span) => span.start < finish && start < span.end),
    )
    if (worked.length === 0) return []
    return [eveningOf(date, worked, given)]
  })
}

function eveningOf(date: IsoDate, worked: readonly DatedStep[], given: EveningsGiven): Evening {
  const { programme } = given
  const spans = spansOn(date, programme.calendar)
  const ends = spans[spans.length - 1]!.end
  const slept = sleptOn(date, given)
  const doors = new Map(
    waysOutOf(slept, given)
      .flatMap((way) => way.openings)
      .map((door) => [door.id, door]),
  )
  return {
    date,
    ends,
    slept,
    doorways: [...doors.values()].flatMap((door) => leafAt(door, ends, given) ?? []),
    covers: coversOn(worked, spans, given),
    wet: programme.steps.flatMap(({ step, start, ready }) =>
      step.room && isFloor(step) && step.gate?.forbids.includes("walk") && start < ends && ready > ends
        ? [{ key: step.key, room: step.room, until: ready }]
        : [],
    ),
    overnight: worked.filter(({ start, finish }) => start < ends && finish > ends),
  }
}

/** Work on the floor itself: what must not be trodden on is not a painted door. */
function isFloor({ stage }: Step): boolean {
  return stage === "tile" || stage === "deck" || stage === "floor" || stage === "oil"
}

/** Rooms slept in on the night of a date: those below, and from the first night on those of the new storey. */
export function sleptOn(date: IsoDate, { programme, site, ways }: EveningsGiven): string[] {
  const first = programme.firstNight?.on
  return site.rooms
    .filter((room) => room.use === "bedroom")
    .filter((room) => ways.slept.has(room.id) || (first !== undefined && date >= first))
    .map((room) => room.id)
}

/** The ways out of some rooms; rooms without one are left out. */
export function waysOutOf(rooms: readonly string[], { site }: Pick<EveningsGiven, "site">): WayOut[] {
  return rooms.flatMap((room) => wayOut(room, site) ?? [])
}

/** How a doorway stands at a moment; null for one that has no leaf and gets none. */
function leafAt(
  door: Site["doors"][number],
  at: Instant,
  { programme }: EveningsGiven,
): EveningDoorway | null {
  const own = programme.steps.filter(({ step }) => step.key.startsWith(`doors/${door.id}/`))
  const hang = own.find(({ step }) => step.key.endsWith("/hang"))
  const opened = own.filter(({ step }) => /\/(take-off|lining|hang)$/.test(step.key))
  if (!hang) return door.leafNow === undefined ? null : { door: door.id, leaf: "old" }
  if (hang.finish <= at) {
    const isToday = clockAt(hang.finish, programme.zone).date === clockAt(at, programme.zone).date
    return { door: door.id, leaf: isToday ? "today" : "new" }
  }
  const isOff = opened.some((each) => each.start < at)
  return { door: door.id, leaf: door.leafNow !== undefined && !isOff ? "old" : "none" }
}

/** The day rule: an alarm is covered from the first dust near it to the end of the last that day, and never into the night. */
function coversOn(
  worked: readonly DatedStep[],
  spans: readonly { start: Instant; end: Instant }[],
  { programme, alarms, ways, reach }: EveningsGiven,
): AlarmCover[] {
  const first = spans[0]!.start
  const last = spans[spans.length - 1]!.end
  return alarms.flatMap(({ room, fittedBy }): AlarmCover[] => {
    const fitted = fittedBy === null ? null : programme.steps.find(({ step }) => step.key === fittedBy)
    const from = fitted ? Math.max(first, fitted.finish) : first
    const near = worked.filter(
      ({ step, finish }) =>
        step.dusty &&
        step.room !== null &&
        finish > from &&
        (step.room === room || (reach > 0 && ways.nextTo(room).includes(step.room))),
    )
    if (near.length === 0) return []
    const on = Math.max(from, Math.min(...near.map((each) => each.start)))
    const off = Math.min(last, Math.max(...near.map((each) => each.finish)))
    if (off <= on) return []
    return [{ room, on: on as Instant, off: off as Instant, dust: near.map(({ step }) => step.key) }]
  })
}
