import type { ProgrammeFile } from "../intake/schema/programme.ts"
import { dayText } from "../kernels/calendar/date-text.ts"
import { clockAt } from "../kernels/calendar/instant.ts"
import type { IsoDate } from "../kernels/units.ts"
import { fixed } from "../kernels/units.ts"
import type { DatedStep, Programme } from "./programme.ts"

/** A step as it was dated when a revision was issued. */
export interface IssuedStep {
  /** Key of the step. */
  step: string
  start: IsoDate
  finish: IsoDate
  /** Person-hours of work, and elapsed hours before something may follow. */
  hours: number
  wait: number
}

/** The programme as it was issued: enough to say later what moved. */
export interface IssuedProgramme {
  finish: IsoDate
  firstNight: IsoDate | null
  steps: IssuedStep[]
}

/** A day as issued and as it is now; null where there is none. */
export interface Shifted {
  was: IsoDate | null
  now: IsoDate | null
}

/** A step whose days differ from the issued ones. */
export interface StepShift {
  key: string
  room: string | null
  title: string
  start: Shifted
  finish: Shifted
  /** Why it stands where it stands now. */
  because: string
  /** Place in `origins` of what set it off; null for what is gone. */
  origin: number | null
}

/** What set moves off: reported days, other work, another wait, a step that is new, or another order of work. */
export interface Origin {
  key: string
  room: string | null
  title: string
  because: string
  /** How many steps moved because of it, itself included. */
  moved: number
}

/** All that moved since a revision was issued. */
export interface Comparison {
  finish: Shifted
  firstNight: Shifted
  origins: Origin[]
  /** In order of their start now; what is gone stands last. */
  shifts: StepShift[]
}

/** What an issue keeps of a programme. */
export function issuedProgramme(programme: Programme): IssuedProgramme {
  return {
    finish: programme.finish,
    firstNight: programme.firstNight?.on ?? null,
    steps: programme.steps.map((each) => ({
      step: each.step.key,
      start: clockAt(each.start, programme.zone).date,
      finish: clockAt(each.finish, programme.zone).date,
      hours: Number(fixed(each.step.hours, 2)),
      wait: Number(fixed(each.step.gate?.hours ?? 0, 2)),
    })),
  }
}

/** True if no step has other days than when it was issued, none is new and none is gone. */
export function isAsIssued(issued: IssuedProgramme, programme: Programme): boolean {
  const now = issuedProgramme(programme)
  const before = new Map(issued.steps.map((each) => [each.step, each]))
  const same = (each: IssuedStep) => {
    const was = before.get(each.step)
    return was !== undefined && was.start === each.start && was.finish === each.finish
  }
  return (
    issued.firstNight === now.firstNight && issued.steps.length === now.steps.length && now.steps.every(same)
  )
}

/**
 * What moved since a revision was issued and why: each step with other days, led back along what held it to the step where it began.
 * @param told days reported from the site
 */
export function compared(
  issued: IssuedProgramme,
  programme: Programme,
  told: ProgrammeFile["progress"],
): Comparison {
  const now = issuedProgramme(programme)
  const nowBy = new Map(now.steps.map((each) => [each.step, each]))
  const wasBy = new Map(issued.steps.map((each) => [each.step, each]))
  const dated = new Map(programme.steps.map((each) => [each.step.key, each]))
  const isMoved = (key: string) => {
    const [was, is] = [wasBy.get(key), nowBy.get(key)]
    return !was || !is || was.start !== is.start || was.finish !== is.finish
  }
  const own = (each: DatedStep) => ownChange(each, wasBy.get(each.step.key), nowBy.get(each.step.key)!, told)
  /** Back to the first step that changed by itself (days may hide moves of hours on the way), or as far as days moved. */
  const originOf = (each: DatedStep): DatedStep => {
    const seen = new Set<string>()
    let farthest = each
    let isUnbroken = true
    for (let here: DatedStep | undefined = each; here && !seen.has(here.step.key); ) {
      seen.add(here.step.key)
      if (own(here) !== null) return here
      isUnbroken &&= isMoved(here.step.key)
      if (isUnbroken) farthest = here
      here = here.behind === null ? undefined : dated.get(here.behind)
    }
    return farthest
  }
  const origins: Origin[] = []
  const shifts = programme.steps.flatMap((each): StepShift[] => {
    const { key, room, title } = each.step
    if (!isMoved(key)) return []
    const from = originOf(each)
    let origin = origins.findIndex((one) => one.key === from.step.key)
    if (origin < 0) {
      origin = origins.length
      const because = own(from) ?? from.because
      origins.push({ key: from.step.key, room: from.step.room, title: from.step.title, because, moved: 0 })
    }
    origins[origin]!.moved++
    const [was, is] = [wasBy.get(key), nowBy.get(key)!]
    return [
      {
        key,
        room,
        title,
        start: { was: was?.start ?? null, now: is.start },
        finish: { was: was?.finish ?? null, now: is.finish },
        because: own(each) ?? each.because,
        origin,
      },
    ]
  })
  const gone = issued.steps
    .filter((each) => !nowBy.has(each.step))
    .map(
      (each): StepShift => ({
        key: each.step,
        room: null,
        title: each.step,
        start: { was: each.start, now: null },
        finish: { was: each.finish, now: null },
        because: "no longer part of the job",
        origin: null,
      }),
    )
  return {
    finish: { was: issued.finish, now: now.finish },
    firstNight: { was: issued.firstNight, now: now.firstNight },
    origins,
    shifts: [...shifts, ...gone],
  }
}

/** What changed at the step itself, in words; null where it only follows others. */
function ownChange(
  { step }: DatedStep,
  was: IssuedStep | undefined,
  is: IssuedStep,
  told: ProgrammeFile["progress"],
): string | null {
  if (!was) return "new since then"
  const report = told.find((each) => each.step === step.key)
  if (report?.finished && report.finished !== was.finish)
    return `reported done on ${dayText(report.finished)}, planned for ${dayText(was.finish)}`
  if (report?.started && report.started !== was.start)
    return `reported begun on ${dayText(report.started)}, planned for ${dayText(was.start)}`
  if (was.hours !== is.hours) return `its work is ${hours(is.hours)} now, was ${hours(was.hours)}`
  if (was.wait !== is.wait)
    return `${step.gate?.process ?? "wait"}: ${hours(is.wait)} now, was ${hours(was.wait)}`
  return null
}

function hours(count: number): string {
  return `${fixed(count, Number.isInteger(count) ? 0 : 2)} h`
}
