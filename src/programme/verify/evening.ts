import { addDays, datesBetween } from "../../kernels/calendar/dates.ts"
import { clockAt, instantAt } from "../../kernels/calendar/instant.ts"
import { isWorkingDay } from "../../kernels/calendar/work-calendar.ts"
import type { IsoDate } from "../../kernels/units.ts"
import type { AlarmPlace, Evening } from "../evenings.ts"
import type { Checked, DatedStep } from "../programme.ts"
import { lived, reachable } from "./reach.ts"
import { isReported } from "./time.ts"

/** A dated programme with the evenings that are printed of it. */
export interface CheckedEvenings extends Checked {
  evenings: readonly Evening[]
  alarms: readonly AlarmPlace[]
}

/**
 * What is wrong on any evening of an occupied house, read from the dated steps and the printed evenings alone: a doorway on the
 * only way out of a bed without a latching leaf, a stair in use wet or taken apart, an alarm under a cover overnight or left bare
 * in dust, a bed slept in before the first night's conditions are met.
 * @returns one line each; nothing if every evening stands
 */
export function eveningsBroken(checked: CheckedEvenings): string[] {
  if (!checked.site.occupied || checked.programme.steps.length === 0) return []
  const nights = datesBetween(checked.programme.start, addDays(checked.programme.finish, 1))
  return [
    ...nights.flatMap((date) => [...leavesBroken(date, checked), ...stairsBroken(date, checked)]),
    ...coversBroken(checked),
    ...firstNightBroken(checked),
  ]
}

const told = (checked: Checked, ...codes: string[]) =>
  checked.programme.findings.some((finding) => codes.includes(finding.code))

/** Bedrooms slept in on the night of a date. */
function beds(date: IsoDate, { site, programme }: Checked): string[] {
  const isLived = lived(site)
  const first = programme.firstNight
  return site.rooms
    .filter(({ id, use }) => use === "bedroom" && (isLived(id) || (first !== null && date >= first.on)))
    .map(({ id }) => id)
}

const knownWays = new WeakMap<Checked["site"], Map<string, string[]>>()

/** Rooms that every way from a bed to the open air leads through; asked every evening, so kept for each site. */
function onlyWay(bed: string, { site }: Checked): string[] {
  const known = knownWays.get(site) ?? new Map<string, string[]>()
  knownWays.set(site, known)
  const found = known.get(bed) ?? roomsOnWay(bed, site)
  known.set(bed, found)
  return found
}

function roomsOnWay(bed: string, site: Checked["site"]): string[] {
  return site.rooms.map(({ id }) => id).filter((id) => id !== bed && !reachable(site, new Set([id])).has(bed))
}

function eveningOf(date: IsoDate, { file, programme }: Checked): number {
  const last = file.hours.map(({ to }) => to).sort()
  return instantAt(date, last[last.length - 1]!, programme.zone)
}

function leavesBroken(date: IsoDate, checked: CheckedEvenings): string[] {
  const { site, programme, file } = checked
  if (told(checked, "door-day-too-long", "doorway-left-open")) return []
  const at = eveningOf(date, checked)
  const ways = new Set(beds(date, checked).flatMap((bed) => onlyWay(bed, checked)))
  return site.doors
    .filter(({ between }) => between.some((room) => ways.has(room)))
    .flatMap((door) => {
      const own = programme.steps.filter(
        (each) => each.step.key.startsWith(`doors/${door.id}/`) && !isReported(each, file),
      )
      const off = own.filter(({ step }) => ["take-off", "lining", "hang"].includes(step.key.split("/")[2]!))
      const hang = off.find(({ step }) => step.key.endsWith("/hang"))
      const isBack = hang !== undefined && hang.finish <= at
      if (isBack && door.work.hang === "new" && door.work.latch === false)
        return [`${door.id} on ${date}: hung without a latch`]
      const isOff = off.some((each) => each.start < at) || (hang !== undefined && door.leafNow === undefined)
      if (!isBack && isOff) return [`${door.id} on ${date}: no leaf in the evening`]
      const line = checked.evenings
        .find((evening) => evening.date === date)
        ?.doorways.find((each) => each.door === door.id)
      return line?.leaf === "none" ? [`${door.id} on ${date}: printed as open, and has a leaf`] : []
    })
}

function stairsBroken(date: IsoDate, checked: CheckedEvenings): string[] {
  const { programme, file } = checked
  const ways = new Set(beds(date, checked).flatMap((bed) => onlyWay(bed, checked)))
  const evening = eveningOf(date, checked)
  const bedtime = instantAt(date, file.bedtime, programme.zone)
  const here = programme.steps.filter(
    (each) => each.step.room !== null && ways.has(each.step.room) && !isReported(each, file),
  )
  const apart = here.filter(
    ({ step, start, finish }) => step.stage === "nosings" && start < evening && finish > evening,
  )
  const wet = here.filter(
    ({ step, start, ready }) =>
      ["tile", "deck", "floor", "oil"].includes(step.stage) &&
      step.gate?.forbids.includes("walk") &&
      start < bedtime &&
      ready > bedtime,
  )
  return [
    ...(told(checked, "stair-day-too-long")
      ? []
      : apart.map(({ step }) => `${step.key} on ${date}: the stair is apart in the evening`)),
    ...(told(checked, "stair-wet-at-night")
      ? []
      : wet.map(({ step }) => `${step.key} on ${date}: wet at bedtime`)),
  ]
}

function coversBroken(checked: CheckedEvenings): string[] {
  const { evenings, alarms, programme } = checked
  const covers = evenings.flatMap((evening) => evening.covers.map((cover) => ({ ...cover, evening })))
  const overnight = covers.flatMap(({ room, on, off }) => {
    const day = clockAt(on, programme.zone).date
    const isLeft = clockAt(off, programme.zone).date !== day || off > eveningOf(day, checked)
    return isLeft ? [`alarm in ${room} on ${day}: covered in the evening`] : []
  })
  const bare = alarms.flatMap((alarm) =>
    dustBy(alarm, checked).flatMap(({ key, from, to, date }) => {
      const isCovered = covers.some(
        (cover) => cover.room === alarm.room && cover.on <= from && cover.off >= to,
      )
      return isCovered ? [] : [`alarm in ${alarm.room} on ${date}: bare in the dust of ${key}`]
    }),
  )
  const idle = covers.flatMap(({ room, on, off, evening }) => {
    const alarm = alarms.find((each) => each.room === room)
    const dust = alarm ? dustBy(alarm, checked).filter((each) => each.from < off && each.to > on) : []
    return dust.length > 0 ? [] : [`alarm in ${room} on ${evening.date}: covered without dust`]
  })
  return [...overnight, ...bare, ...idle]
}

/** Stretches of dust near an alarm that is up, day by day. */
function dustBy(alarm: AlarmPlace, checked: Checked) {
  const { programme, site, file, rules } = checked
  const reach = rules.value("programme-dust-reach")
  const isNear = (room: string) =>
    room === alarm.room ||
    (reach > 0 &&
      (site.doors.some(({ between }) => between.includes(room) && between.includes(alarm.room)) ||
        site.stairs.some(
          ({ fromRoom, toRoom }) =>
            [fromRoom, toRoom].includes(room) && [fromRoom, toRoom].includes(alarm.room),
        )))
  const up = programme.steps.find(({ step }) => step.key === alarm.fittedBy)?.finish ?? 0
  const starts = file.hours.map(({ from }) => from).sort()
  const dusty = programme.steps.filter(
    ({ step }) => step.dusty && step.hours > 0 && step.room !== null && isNear(step.room),
  )
  return dusty.flatMap(({ step, start, finish }: DatedStep) =>
    datesBetween(clockAt(start, programme.zone).date, clockAt(finish, programme.zone).date)
      .filter((date) => isWorkingDay(date, programme.calendar))
      .flatMap((date) => {
        const from = Math.max(start, up, instantAt(date, starts[0]!, programme.zone))
        const to = Math.min(finish, eveningOf(date, checked))
        return from < to ? [{ key: step.key, date, from, to }] : []
      }),
  )
}

/** The first night after everything it must wait for, told again from the steps. */
function firstNightBroken({ programme, site, file }: CheckedEvenings): string[] {
  const night = programme.firstNight
  const isLived = lived(site)
  const isNew = (id: string | null) => site.rooms.some((room) => room.id === id && !isLived(room.id))
  const must = programme.steps.filter(
    ({ step }) =>
      isNew(step.room) ||
      step.stage === "nosings" ||
      /^doors\/[^/]+\/(hang|gaps|seal-faces|light|enclosure)$/.test(step.key) ||
      /^electrics\/.*\/(close-up|alarms-together)$/.test(step.key),
  )
  const wanted = site.rooms.some((room) => room.use === "bedroom" && !isLived(room.id)) && must.length > 0
  if (!night) return wanted ? ["no first night is told"] : []
  const late = must
    .filter((each) => clockAt(each.ready, programme.zone).date > night.on)
    .map(({ step }) => `first night on ${night.on}: before ${step.key} is ready`)
  const visit = file.household?.controlVisit
  const asked = visit !== undefined && visit > night.on ? [`first night before building control comes`] : []
  const early = (file.household?.sleeps ?? [])
    .filter(
      ({ room }) => isNew(room) && !programme.findings.some(({ code }) => code === "sleeps-in-new-storey"),
    )
    .map(({ room }) => `somebody sleeps in ${room} before the first night, and nothing is said`)
  return [...late, ...asked, ...early]
}
