import type { Finding } from "../../kernels/finding.ts"
import { type DryingProcessId, dryingForbidden, dryingHours, dryingProcesses } from "../../rulebook/drying.ts"
import type { Gate, Task } from "../trade.ts"
import type { FloorInputs } from "./inputs.ts"
import type { FloorPlan } from "./plan-floor.ts"
import { wholeUp } from "./whole-up.ts"

/** What oil must wait for: its next coat, feet in socks, rugs and water. */
export const oilProcesses = ["oil", "oil-walk", "oil-full"] as const satisfies readonly DryingProcessId[]

const hoursInDay = 24

/** The gate after a coat of oil, whole hours in the job's air; none where the air forbids oiling (a finding says so). */
export function oilGate(task: Task<FloorInputs>, isLast: boolean): Gate | undefined {
  const id = isLast ? "oil-walk" : "oil"
  const hours = dryingHours(id, task.job.climate, task.job.rules)
  if (hours === "do not") return undefined
  const { what, next, until } = dryingProcesses[id]
  return {
    process: `${what}, before ${next}`,
    hours: wholeUp(hours),
    until,
    forbids: ["walk", "load", "wet"],
  }
}

/** Whole days from the last coat to rugs, water and covering, in the job's air; null where the air forbids oiling. */
export function oilFullDays(task: Task<FloorInputs>): number | null {
  const hours = dryingHours("oil-full", task.job.climate, task.job.rules)
  return hours === "do not" ? null : wholeUp(hours / hoursInDay)
}

/** True for oil that smells of more than water: as its product says; without a product taken to. */
export function oilFumes(plan: FloorPlan): boolean {
  return plan.oil?.base !== "water"
}

/** The finding where oil must not be put on in the job's air. */
export function oilFindings(task: Task<FloorInputs>): Finding[] {
  const { climate, rules } = task.job
  const why = task.input.oilCoats > 0 ? dryingForbidden("oil", climate, rules) : null
  if (!why) return []
  return [
    {
      code: "air-outside-range",
      severity: "error",
      at: { file: "job.yaml", path: ["climate"] },
      message: `Floor oil must not be used at ${climate.temperature} °C and ${climate.humidity} %: ${why}.`,
      mend: "Warm, dry and air the rooms, or wait.",
    },
  ]
}
