import { roundHalfUp, type SquareMetres } from "../../kernels/units.ts"
import { type DryingProcessId, dryingHours, dryingProcesses } from "../../rulebook/drying.ts"
import type { Gate, Step, Task } from "../trade.ts"
import type { TileField } from "./fields.ts"
import type { TilingInputs } from "./inputs.ts"

type TilingTask = Task<TilingInputs>

/** Steps of tiling a room, each after the one before; sealing waits for the sanitaryware. */
export function tilingSteps(task: TilingTask, fields: TileField[]): Step[] {
  const out = (id: string) => task.job.rules.value(id)
  const hours = fields.reduce((sum, field) => sum + field.area / out(`tile-out-${field.on}`), 0)
  const area: SquareMetres = fields.reduce((sum, field) => sum + field.area, 0)
  const sealed = fields.reduce((sum, field) => sum + field.sealed, 0)
  const key = (step: string) => `tiling/${task.room.id}/${step}`
  return [
    step(task, "prepare", {
      title: "Prime, waterproof, set out",
      detail: `Backing dry, flat and firm. ${task.input.wetWalls ? "Waterproof behind shower and bath and lap it over the floor. " : ""}Draw centre and level lines; lay out a dry row before mixing.`,
      stage: "tile",
      hours: out("tile-out-prepare"),
      hold: "Setting out agreed: no sliver at door, corner or sill.",
    }),
    step(task, "lay", {
      title: `Tile ${fields.map((field) => field.name.toLowerCase()).join(", ")}`,
      detail:
        "Solid bed on floors and in the wet; joints open at corners and at the floor for sealant. Dust cut wet.",
      stage: "tile",
      hours,
      after: [key("prepare")],
      ...gate(task, "tile-adhesive"),
      noisy: true,
      dusty: true,
    }),
    step(task, "grout", {
      title: "Grout",
      detail: "Wash off before it hardens; corners and floor joint left open.",
      stage: "tile",
      hours: area / out("tile-out-grout"),
      after: [key("lay")],
      ...gate(task, "grout"),
      hold: "Keep off until the hours have passed; no fixings before.",
    }),
    step(task, "seal", {
      title: "Seal corners and floor joint",
      detail: `${roundHalfUp(sealed, 1)} m of joint, clean and dry, after sanitaryware stands. No water on the grout before its full time.`,
      stage: "fill",
      hours: sealed / out("tile-out-seal"),
      after: [`plumbing/${task.room.id}/seal`],
      ...gate(task, "sealant", out("tile-edge-joint")),
    }),
  ]
}

function gate(task: TilingTask, process: DryingProcessId, thickness?: number): { gate?: Gate } {
  const hours = dryingHours(
    process,
    { ...task.job.climate, ...(thickness ? { thickness } : {}) },
    task.job.rules,
  )
  if (hours === "do not") return {}
  const { what, next, until, forbids } = dryingProcesses[process]
  const whole = Math.ceil(Number(hours.toPrecision(9)))
  return { gate: { process: `${what}, before ${next}`, hours: whole, until, forbids: [...forbids] } }
}

function step(
  task: TilingTask,
  key: string,
  of: Pick<Step, "title" | "detail" | "stage" | "hours"> & Partial<Step>,
): Step {
  const common = { trade: "tiling", room: task.room.id, after: [], noisy: false, dusty: false }
  return { ...common, ...of, key: `tiling/${task.room.id}/${key}` }
}
