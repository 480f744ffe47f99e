import type { ProgrammeFile } from "../intake/schema/programme.ts"
import { dayText } from "../kernels/calendar/date-text.ts"
import { clockAt, type Instant } from "../kernels/calendar/instant.ts"
import type { Finding } from "../kernels/finding.ts"
import type { DatedStep, FirstNight, Site } from "./programme.ts"
import { wayOut } from "./way-out.ts"
import type { Ways } from "./ways.ts"

interface Given {
  steps: readonly DatedStep[]
  firstNight: FirstNight | null
  site: Site
  ways: Ways
  file: ProgrammeFile
  zone: string
  /** True where a rule of one day could not be kept and is told already. */
  relaxed: boolean
}

/** What the people in the house were promised and cannot have, or what must be known of them and is not. */
export function householdFindings(given: Given): Finding[] {
  const { site, file } = given
  if (!site.occupied) return []
  return [
    ...(file.household ? bedFindings(given) : []),
    ...visitFindings(given),
    ...(given.relaxed ? [] : openingFindings(given)),
    ...latchFindings(given),
  ]
}

/** Beds in rooms that are not slept in yet, and bedrooms of which nobody says who sleeps there. */
function bedFindings({ site, ways, file, firstNight }: Given): Finding[] {
  const sleeps = file.household?.sleeps ?? []
  const early = sleeps.flatMap((each, index): Finding[] => {
    if (ways.lived.has(each.room) || !site.rooms.some((room) => room.id === each.room)) return []
    const until = firstNight ? ` before the evening of ${dayText(firstNight.on)}` : ""
    return [
      {
        code: "sleeps-in-new-storey",
        severity: "error",
        at: { file: "programme.yaml", path: ["household", "sleeps", index, "room"] },
        message: `${each.who} cannot sleep in ${each.room}: nobody sleeps in the new storey${until}.`,
        mend: "Name the room below in which they sleep until then.",
      },
    ]
  })
  const unknown = [...ways.slept].filter((room) => !sleeps.some((each) => each.room === room))
  const missing = unknown.map(
    (room): Finding => ({
      code: "sleeper-unknown",
      severity: "note",
      at: { file: "programme.yaml", path: ["household"] },
      message: `Nobody is written for bedroom ${room}.`,
      mend: `Add it under household.sleeps, or "nobody" as who.`,
    }),
  )
  return [...early, ...missing]
}

/** A visit of building control before there is all to be seen. */
function visitFindings({ firstNight, file, site }: Given): Finding[] {
  const visit = file.household?.controlVisit
  const last = firstNight?.conditions.flatMap(({ id, on }) => (id !== "control" && on ? [on] : [])).sort()
  const done = last?.[last.length - 1]
  if (visit === undefined || done === undefined || visit >= done || !site.occupied) return []
  return [
    {
      code: "control-visit-early",
      severity: "warning",
      at: { file: "programme.yaml", path: ["household", "controlVisit"] },
      message: `Building control comes on ${dayText(visit)}; what it must see before the first night is ready on ${dayText(done)}.`,
      mend: "Agree a later day, or a second visit.",
    },
  ]
}

/** Doorways on a way out from a bed whose leaf is off over a night. */
function openingFindings(given: Given): Finding[] {
  const { steps, zone, file } = given
  return doorwaysOnWays(given).flatMap(({ id }): Finding[] => {
    const own = steps.filter(({ step }) => openers.test(step.key) && step.key.split("/")[1] === id)
    const hang = own.find(({ step }) => step.key.endsWith("/hang"))
    const isReported = file.progress.some((each) => each.step.startsWith(`doors/${id}/`))
    if (own.length === 0 || isReported) return []
    const off = clockAt(Math.min(...own.map((each) => each.start)) as Instant, zone).date
    const back = hang ? clockAt(hang.finish, zone).date : null
    if (off === back) return []
    const until = back ? `until ${dayText(back)}` : "for good: none is hung again"
    return [
      {
        code: "doorway-left-open",
        severity: "error",
        at: { file: "house.yaml", path: ["doors"] },
        message: `Door ${id} stands on a way out from a bed and has no leaf from ${dayText(off)} ${until}.`,
        mend: "Hang a leaf by the evening: nothing may dry between old leaf and new, and the day must hold the work.",
      },
    ]
  })
}

const openers = /^doors\/[^/]+\/(take-off|lining|hang)$/

/** Leaves hung on a way out from a bed without a latch to keep them shut. */
function latchFindings(given: Given): Finding[] {
  const { steps, site } = given
  return doorwaysOnWays(given).flatMap((door): Finding[] => {
    const isHung = steps.some(({ step }) => step.key === `doors/${door.id}/hang`)
    if (!isHung || door.work.hang !== "new" || door.work.latch) return []
    return [
      {
        code: "way-out-without-latch",
        severity: "warning",
        at: { file: "house.yaml", path: ["doors", site.doors.indexOf(door), "work"] },
        message: `Door ${door.id} stands on a way out from a bed and is hung without a latch: it does not stay shut.`,
        mend: "Add latch: true, or a closer that keeps it shut as building control agrees.",
      },
    ]
  })
}

/** Doorways along the ways out from the beds below. */
function doorwaysOnWays({ site, ways }: Given): Site["doors"] {
  const found = [...ways.slept].flatMap((room) => wayOut(room, site)?.openings ?? [])
  return site.doors.filter((door) => found.includes(door))
}
