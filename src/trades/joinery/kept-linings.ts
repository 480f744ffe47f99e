import type { Mm } from "../../kernels/units.ts"
import type { Task } from "../trade.ts"
import type { JoineryInputs } from "./inputs.ts"
import { buildUp } from "./lining-inside.ts"

/** A lining that is already in, and how far up its feet are sawn off so that the new floor runs under it. */
export interface KeptLining {
  door: string
  wall: number
  /** Over the deck, mm. */
  cut: Mm
}

/**
 * Linings that stay in a room whose floor is laid new and floating: their feet, and those of architraves that stay, are cut off at
 * the height of board and underlay with a clearance. None where the floor stays.
 */
export function keptLinings({ room, job, facts }: Task<JoineryInputs>): KeptLining[] {
  if (facts.floorGap === undefined) return []
  const cut = buildUp(room.id, job) + job.rules.value("floor-undercut-allowance")
  return room.doors
    .filter(({ door }) => door.lining === "keep")
    .map(({ door, wall }) => ({ door: door.id, wall, cut }))
}
