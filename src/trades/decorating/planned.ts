import type { Step, Task } from "../trade.ts"
import type { DecoratingInputs } from "./inputs.ts"

/** A step, and the surfaces it coats; null where it is the whole room's. */
export interface Planned {
  step: Step
  surfaces: string[] | null
}

/** A step of decorating in a room, with what a step must have filled in. */
export function stepIn(
  task: Task<DecoratingInputs>,
  key: string,
  of: Pick<Step, "title" | "detail" | "stage" | "hours"> & Partial<Step>,
): Step {
  const { room } = task
  const common = { trade: "decorating", room: room.id, after: [], noisy: false, dusty: false }
  return { ...common, ...of, key: `decorating/${room.id}/${key}` }
}
