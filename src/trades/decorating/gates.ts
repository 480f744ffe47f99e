import type { ElapsedHours } from "../../kernels/units.ts"
import { type DryingProcessId, dryingHours, dryingProcesses } from "../../rulebook/drying.ts"
import type { Gate, Task } from "../trade.ts"
import type { DecoratingInputs } from "./inputs.ts"

/** Gate of a process in the job's air: whole hours, rounded up; none where the air forbids it (a finding says so). */
export function gateOf(
  task: Task<DecoratingInputs>,
  process: DryingProcessId,
  thickness?: number,
): Gate | undefined {
  const { still } = task.input
  const air = { ...task.job.climate, still, ...(thickness ? { thickness } : {}) }
  const hours = dryingHours(process, air, task.job.rules)
  if (hours === "do not") return undefined
  const { what, next, until, forbids } = dryingProcesses[process]
  return { process: `${what}, before ${next}`, hours: wholeHours(hours), until, forbids: [...forbids] }
}

/** Hours rounded up to whole ones, for paper: never sooner. */
export function wholeHours(hours: ElapsedHours): ElapsedHours {
  return Math.ceil(Number(hours.toPrecision(9)))
}
