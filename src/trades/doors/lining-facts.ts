import type { RoomFacts, Task } from "../trade.ts"
import { floorLevel } from "./floors.ts"
import type { HungDoor } from "./hanging/hung-door.ts"
import type { DoorsInputs } from "./inputs.ts"
import { rulesRead } from "./rules-read.ts"
import { doorsOfRoom } from "./work.ts"

/**
 * What other trades need of the doors that belong to a room: the inside of each lining, width between its legs and height over this
 * room's finished floor, mm. A lining that is made is as the leaf asks; one that stays is as taped, at its widest and highest.
 * Doorways whose lining is not known (none is made, or its timber is not chosen) are left out.
 */
export function liningFacts(task: Task<DoorsInputs>): RoomFacts {
  const { job, room } = task
  const doors = doorsOfRoom(task, rulesRead(job.rules))
  const linings = doors.flatMap((hung) => {
    const inside = insideOf(hung)
    if (!inside) return []
    const overOwn = hung.floors.highest - floorLevel(room, job.passed)
    return [[hung.door.id, { width: inside.width, height: inside.height + overOwn }] as const]
  })
  return { linings: Object.fromEntries(linings) }
}

/** Width, and height over the highest floor that the leaf closes over, mm. */
function insideOf({ door, fitted, heights }: HungDoor): { width: number; height: number } | null {
  if (fitted?.lining) return { width: fitted.lining.internalWidth, height: fitted.lining.internalHeight }
  if (door.lining !== "keep" || door.lengthsTo !== "lining") return null
  return { width: Math.max(...door.widths), height: Math.max(...heights) }
}
