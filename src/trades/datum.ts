import type { Room } from "../survey/room.ts"

const level = {
  deck: "the bare deck",
  "finished-floor": "the finished floor",
  "old-floor": "the floor as it was",
  ground: "the ground",
}

/**
 * The face a room's lengths go to and the datum its heights come from, in words for a sheet's title block.
 * @param heights the datum of the sheet's own heights, where it is not the one the room was measured from
 */
export function datumText(room: Pick<Room, "measured">, heights?: keyof typeof level): string {
  const { lengthsTo } = room.measured
  const heightsFrom = heights ?? room.measured.heightsFrom
  return `Heights from ${level[heightsFrom]}. Lengths to ${lengthsTo}. Millimetres.`
}
