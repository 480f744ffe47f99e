import { momentText } from "../../kernels/calendar/date-text.ts"
import { addElapsed, clockAt, elapsed, instantAt } from "../../kernels/calendar/instant.ts"
import type { IsoDate } from "../../kernels/units.ts"
import {
  type DryingAir,
  type DryingProcessId,
  dryingForbidden,
  dryingHours,
  dryingProcesses,
} from "../../rulebook/drying.ts"
import type { Rules } from "../../rulebook/rules.ts"
import { wholeHours } from "../../trades/decorating/gates.ts"

/** What is typed in: what was put on, when by the clock of the site, and the air it stands in. */
export interface TimerInput extends DryingAir {
  process: DryingProcessId
  start: { date: IsoDate; time: string }
  zone: string
}

/** The answer: the earliest next step, or why there must be none. */
export type TimerAnswer =
  | { doNot: string }
  | {
      /** Elapsed hours, rounded up as on the sheets. */
      hours: number
      /** Date and time by the clock of the site. */
      at: { date: IsoDate; time: string }
      /** The same for the reader. */
      text: string
      next: string
      until: string
    }

/** The earliest next step after a coat, fill or bed: the build's own figure, counted through nights and changes of the clock. */
export function nextStep({ process, start, zone, ...air }: TimerInput, rules: Rules): TimerAnswer {
  const hours = dryingHours(process, air, rules)
  if (hours === "do not") return { doNot: dryingForbidden(process, air, rules) ?? "outside the rule" }
  const whole = wholeHours(hours)
  const instant = addElapsed(instantAt(start.date, start.time, zone), elapsed(whole))
  const { next, until } = dryingProcesses[process]
  return { hours: whole, at: clockAt(instant, zone), text: momentText(instant, zone), next, until }
}
