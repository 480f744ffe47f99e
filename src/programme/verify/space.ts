import { addDays } from "../../kernels/calendar/dates.ts"
import { clockAt, instantAt } from "../../kernels/calendar/instant.ts"
import type { Checked, DatedStep, Site } from "../programme.ts"
import { isDoorBelow } from "./order.ts"
import { lived, reachable } from "./reach.ts"
import { isReported } from "./time.ts"

/** Crews in rooms, dust on wet coats, wet floors on the way, doorways by evening, and the way to bed at night. */
export function spaceBroken(checked: Checked): string[] {
  const worked = checked.programme.steps.filter(
    (each) => each.step.hours > 0 && !isReported(each, checked.file),
  )
  return [
    ...roomsBroken(worked, checked),
    ...dustBroken(worked, checked),
    ...waysBroken(worked, checked.site),
    ...doorsBroken(worked, checked),
    ...nightsBroken(worked, checked),
  ]
}

function roomsBroken(steps: readonly DatedStep[], { file, rules }: Checked): string[] {
  const clean = ({ step }: DatedStep) => !step.dusty && !step.gate?.hours
  const licensed = (each: DatedStep) => file.crews.some((crew) => crew.id === each.crew && crew.licensed)
  const most = rules.value("programme-crews-in-room")
  return steps.flatMap((each) => {
    const others = steps.filter(
      (other) =>
        other.step.room !== null &&
        other.step.room === each.step.room &&
        other.crew !== each.crew &&
        other.start <= each.start &&
        each.start < other.finish &&
        !(clean(each) && clean(other) && (licensed(each) || licensed(other))),
    )
    return others.length >= most ? [`${each.step.key}: ${others[0]!.step.key} is in the room`] : []
  })
}

function dustBroken(steps: readonly DatedStep[], { site, rules }: Checked): string[] {
  const reach = rules.value("programme-dust-reach")
  const near = (a: string | null, b: string | null) =>
    a !== null &&
    b !== null &&
    (a === b ||
      (reach > 0 &&
        (site.doors.some(({ between }) => between.includes(a) && between.includes(b)) ||
          site.stairs.some(({ fromRoom, toRoom }) =>
            [fromRoom, toRoom].every((id) => id === a || id === b),
          ))))
  const coats = steps.filter(
    ({ step }) => step.gate && ["mist", "white", "woodwork", "last-coat", "oil"].includes(step.stage),
  )
  return coats.flatMap((coat) =>
    steps
      .filter(
        (each) =>
          each !== coat &&
          each.step.dusty &&
          near(each.step.room, coat.step.room) &&
          each.start < coat.ready &&
          coat.start < each.finish,
      )
      .map((each) => `${each.step.key}: dust on ${coat.step.key}`),
  )
}

/** True for a step whose floor nobody walks on until it is ready. */
function isWetFloor({ step }: DatedStep): boolean {
  return (
    ["tile", "deck", "floor", "oil"].includes(step.stage) && (step.gate?.forbids.includes("walk") ?? false)
  )
}

function waysBroken(steps: readonly DatedStep[], site: Site): string[] {
  const wet = steps.filter((each) => isWetFloor(each) && each.step.room !== null)
  return steps.flatMap((each) => {
    const { room } = each.step
    if (room === null || !site.rooms.some(({ id }) => id === room)) return []
    const during = wet.filter(
      (floor) => floor !== each && floor.start < each.finish && floor.ready > each.start,
    )
    const moments = [each.start, ...during.map((floor) => Math.max(floor.start, each.start))]
    const isCut = moments.some((moment) => {
      const shut = during.filter((floor) => floor.start <= moment && moment < floor.ready)
      return shut.length > 0 && !reachable(site, new Set(shut.map((floor) => floor.step.room!))).has(room)
    })
    return isCut ? [`${each.step.key}: the way is wet`] : []
  })
}

function doorsBroken(steps: readonly DatedStep[], { site, programme }: Checked): string[] {
  const isLived = lived(site)
  const excused = programme.findings.some((finding) => finding.code === "door-day-too-long")
  if (excused) return []
  const below = steps.filter((each) => isDoorBelow(each, site, isLived))
  const hung = below.filter((each) => each.step.key.endsWith("/hang"))
  return hung.flatMap((hang) => {
    const door = hang.step.key.split("/")[1]
    const own = below.filter((each) => each.step.key.split("/")[1] === door)
    if (own.some((each) => each.step.gate && each !== hang)) return []
    const days = own.flatMap((each) => [
      clockAt(each.start, programme.zone).date,
      clockAt(each.finish, programme.zone).date,
    ])
    return new Set(days).size > 1 ? [`doors/${door}: stands open in the evening`] : []
  })
}

/** At every bedtime all rooms in which people sleep are reached over dry floors. */
function nightsBroken(steps: readonly DatedStep[], { site, file, programme }: Checked): string[] {
  if (programme.findings.some((finding) => finding.code === "stair-wet-at-night")) return []
  const isLived = lived(site)
  const beds = site.rooms.filter((room) => room.use === "bedroom" && isLived(room.id))
  return steps.filter(isWetFloor).flatMap((floor) => {
    const near = floor.step.room
    if (near === null) return []
    const open = reachable(site, new Set([near]))
    const cut = beds.filter((room) => room.id !== near && !open.has(room.id))
    const first = clockAt(floor.start, programme.zone).date
    for (let date = first; cut.length > 0; date = addDays(date, 1)) {
      const bedtime = instantAt(date, file.bedtime, programme.zone)
      if (bedtime >= floor.ready) return []
      if (bedtime >= floor.start) return [`${floor.step.key}: wet at bedtime on the way to ${cut[0]!.id}`]
    }
    return []
  })
}
