import type { Task } from "../trade.ts"
import { type CoatLine, coatLines } from "./coats.ts"
import type { DecoratingInputs } from "./inputs.ts"
import { type Surface, surfacesOf } from "./surfaces.ts"
import { type WoodItem, woodworkOf } from "./woodwork.ts"

/** A room's decorating before it is put on paper. */
export interface RoomPaint {
  surfaces: Surface[]
  wood: WoodItem[]
  lines: CoatLine[]
}

/** Surfaces, woodwork and coats of a room. */
export function roomPaint(task: Task<DecoratingInputs>): RoomPaint {
  const from = { room: task.room, input: task.input, facts: task.facts, rules: task.job.rules }
  const surfaces = surfacesOf(from)
  const wood = woodworkOf(from)
  return { surfaces, wood, lines: coatLines(task, surfaces, wood) }
}
