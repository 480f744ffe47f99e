import type { Instant } from "../kernels/calendar/instant.ts"
import type { WorkCalendar } from "../kernels/calendar/work-calendar.ts"
import type { Finding } from "../kernels/finding.ts"
import type { IsoDate, WorkingHours } from "../kernels/units.ts"
import type { Step } from "../trades/trade.ts"

/** A crew as the programme sees it. */
export interface Crew {
  id: string
  name: string
  people: number
  trades: string[]
  visits?: number
  licensed: boolean
}

/** A step with its place in time. */
export interface DatedStep {
  step: Step
  crew: string
  /** First and last moment of work. */
  start: Instant
  finish: Instant
  /** When what follows may begin: the finish, or the end of its gate. */
  ready: Instant
  /** The key of the step that held it back last, or null where only the crew or the start of the job did. */
  heldBy: string | null
  /** Why it cannot start sooner, in plain words. */
  because: string
}

/** One visit of a crew: working days without a free working day between them. */
export interface Visit {
  crew: string
  from: IsoDate
  to: IsoDate
  keys: string[]
}

/** The dated sequence of the job. */
export interface Programme {
  zone: string
  calendar: WorkCalendar
  crews: Crew[]
  steps: DatedStep[]
  visits: Visit[]
  start: IsoDate
  finish: IsoDate
  /** Person-hours by crew. */
  labour: Map<string, WorkingHours>
  findings: Finding[]
}
