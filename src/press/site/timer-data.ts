import {
  type DryingProcess,
  type DryingProcessId,
  dryingProcesses,
  dryingRests,
} from "../../rulebook/drying.ts"
import type { RuleEntry } from "../../rulebook/entry.ts"
import type { JobResult } from "../../sheets/job-result.ts"

/** What the drying timer of a job works with. */
export interface TimerData {
  zone: string
  /** The entries in force that drying rests on. */
  rules: RuleEntry[]
}

/** A choice of the timer: what was put on, and what is to follow. */
export interface TimerChoice {
  id: string
  text: string
}

/** The timer's data, as text for its form, and what it can be asked. */
export function timerData({ job, rules }: JobResult): { data: string; choices: TimerChoice[] } {
  const processes = Object.entries(dryingProcesses) as [DryingProcessId, DryingProcess][]
  const ids = [...new Set(processes.flatMap(([id]) => dryingRests(id)))].sort()
  const entries = ids.map((id): RuleEntry => {
    const { what, value, unit, range, status, source } = rules.entry(id)
    return { id, what, value, unit, status, source, ...(range ? { range } : {}) }
  })
  const data: TimerData = { zone: job.zone, rules: entries }
  return {
    data: JSON.stringify(data),
    choices: processes.map(([id, { what, next }]) => ({ id, text: `${what}, before ${next}` })),
  }
}
