import type { Mm } from "../../kernels/units.ts"
import type { Task } from "../trade.ts"
import type { JoineryInputs } from "./inputs.ts"
import { buildUp, liningInside } from "./lining-inside.ts"

/** A threshold bar on the schedule. */
export interface ThresholdBar {
  door: string
  wall: number
  /** Between the legs of the lining, mm. */
  length: Mm
  profile: string
  product: string | undefined
  /** What lies either side: the room, and its finished floor over the deck, mm; null where it is not known (outside). */
  here: { room: string; level: Mm; finish: string }
  there: { room: string; level: Mm | null; finish: string }
  /** How far the floor steps up (positive) going out of this room, mm. */
  step: Mm | null
}

/** The threshold bars of a room: length from the doorway's lining, level each side from the floors that are laid. */
export function thresholdBars({ room, job, input }: Task<JoineryInputs>): ThresholdBar[] {
  return input.threshold.flatMap(({ door, product, profile }): ThresholdBar[] => {
    const here = room.doors.find((each) => each.door.id === door)
    if (!here) return []
    const far = here.door.between.find((each) => each !== room.id) ?? "outside"
    const other = job.house.rooms.find((each) => each.id === far)
    const level = buildUp(room.id, job)
    const otherLevel = other && other.storey.id === room.storey.id ? buildUp(far, job) : null
    return [
      {
        door,
        wall: here.wall,
        length: liningInside(here, room, job).width,
        profile,
        product: job.product(product ?? job.chosen("threshold"), "length")?.id,
        here: { room: room.id, level, finish: finishOf(room.id, job) },
        there: { room: far, level: otherLevel, finish: finishOf(far, job) },
        step: otherLevel === null ? null : otherLevel - level,
      },
    ]
  })
}

/** What one walks on in a room, in a word; empty where it is not known. */
function finishOf(room: string, job: Task<JoineryInputs>["job"]): string {
  const finish = job.passed.get(room)?.floorFinish ?? ""
  return finish === "old" ? "floor as it was" : finish
}
