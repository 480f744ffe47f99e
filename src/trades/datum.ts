import type { Room } from "../survey/room.ts"

const level = {
  deck: "the bare deck",
  "finished-floor": "the finished floor",
  "old-floor": "the floor as it was",
  ground: "the ground",
}

/** The face a room's lengths go to and the datum its heights come from, in words for a sheet's title block. */
export function datumText(room: Pick<Room, "measured">): string {
  const { lengthsTo, heightsFrom } = room.measured
  return `Heights from ${level[heightsFrom]}. Lengths to ${lengthsTo}. Millimetres.`
}
