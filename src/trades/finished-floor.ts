import type { Mm } from "../kernels/units.ts"
import { floorAboveDatum } from "../survey/room-from.ts"
import type { Task } from "./trade.ts"

/** How far the finished floor stands over the room's own datum, mm: by the floor that is passed on, else what lies there now. */
export function finishedFloor(task: Pick<Task<unknown>, "room" | "facts">): Mm {
  const { room, facts } = task
  return floorAboveDatum(room, room.storey, facts.floorBuildUp ?? room.storey.finishNow)
}
