import type { ProgrammeFile } from "../intake/schema/programme.ts"
import type { Instant } from "../kernels/calendar/instant.ts"
import type { WorkCalendar } from "../kernels/calendar/work-calendar.ts"
import type { At, Finding } from "../kernels/finding.ts"
import type { IsoDate, WorkingHours } from "../kernels/units.ts"
import type { Rules } from "../rulebook/rules.ts"
import type { House } from "../survey/room.ts"
import type { Step } from "../trades/trade.ts"

/** A day before which a step cannot begin: what it needs is not there yet, or not chosen. */
export interface Hold {
  /** Key of the step. */
  key: string
  from: IsoDate
  /** What it waits for, in plain words. */
  because: string
  /** Where the author wrote what decides it. */
  at: At
}

/** What the programme must know of the house: its rooms and how one gets from one to the other. */
export type Site = Pick<House, "rooms" | "doors" | "stairs" | "occupied">

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
  /** People of the crew who do it. */
  people: number
  /** First and last moment of work. */
  start: Instant
  finish: Instant
  /** When what follows may begin: the finish, or the end of its gate. */
  ready: Instant
  /** Latest finish that, with crews and rooms in this order, moves no other finish of the job. */
  latest: Instant
  /** Working hours from finish to latest finish; 0 on the chain that decides the end. */
  float: WorkingHours
  /** The key of the step that held it back last, or null where only the crew or the start of the job did. */
  heldBy: string | null
  /** The same with its crew's turns: the key of the step it comes behind, or null where only the start of the job held it. */
  behind: string | null
  /** Why it cannot start sooner, in plain words. */
  because: string
  /** The clock time by which it is done each day, since people sleep on the storey and it gives off solvent. */
  doneBy?: string
}

/** One visit of a crew: working days without a free working day between them. */
export interface Visit {
  crew: string
  from: IsoDate
  to: IsoDate
  keys: string[]
}

/** What is known of the shortest finish: no programme under these rules ends on an earlier day. */
export interface FinishBound {
  finish: IsoDate
  /** True if the programme ends on that day. */
  proven: boolean
  /** What forces it, in words: a chain of steps or the work of one crew. */
  by: string
}

/** The first night in a new storey: the day from whose evening on people may sleep there, and what it waits for. */
export interface FirstNight {
  on: IsoDate
  /** Keys of the steps it waits for, the last to be ready first. */
  after: string[]
  /** The same by what they stand for, each with the day on which it is met; none where only a person can tell. */
  conditions: FirstNightCondition[]
  /** Rooms of the new storey, in none of which anyone sleeps before. */
  rooms: string[]
}

/** One thing that must be so before anyone sleeps in a new storey. */
export interface FirstNightCondition {
  id: "doors" | "enclosure" | "alarms" | "guarding" | "rooms" | "control"
  on: IsoDate | null
  /** Keys of the steps it waits for. */
  after: string[]
}

/** A step that an actual start or finish has moved. */
export interface Move {
  key: string
  /** Finish as first dated and as dated now. */
  was: IsoDate
  now: IsoDate
  because: string
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
  bound: FinishBound
  /** Null where no new storey is slept in. */
  firstNight: FirstNight | null
  moves: Move[]
  /** Person-hours by crew. */
  labour: Map<string, WorkingHours>
  findings: Finding[]
}

/** A dated programme and all it was dated from. */
export interface Checked {
  programme: Programme
  steps: readonly Step[]
  site: Site
  file: ProgrammeFile
  rules: Rules
  holds?: readonly Hold[]
}
