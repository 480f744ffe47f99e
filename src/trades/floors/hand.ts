import { lengthOf, type Offcut } from "./layout/boards.ts"
import type { FloorLayout } from "./rows.ts"

/** Offcuts carried from room to room at most: more nobody keeps in order on site. */
const mostCarried = 6

/**
 * Offcuts that rooms laid so far leave, the longest of them: each with the room that opened its board, and marked with the room
 * whose row left it, `A1 3R`. What an earlier room was lent and cut into is told by what that room left of it.
 */
export function offcutsInHand(rooms: readonly { id: string; layout: FloorLayout }[]): Offcut[] {
  const lent = new Set(rooms.flatMap(({ layout }) => layout.brought.map((offcut) => offcut.mark)))
  return rooms
    .flatMap(({ id, layout }) =>
      layout.offcuts.map((offcut) => ({ ...offcut, room: offcut.room ?? id, mark: `${id} ${offcut.mark}` })),
    )
    .filter((offcut) => !lent.has(offcut.mark))
    .sort((a, b) => lengthOf(b) - lengthOf(a) || (a.mark < b.mark ? -1 : 1))
    .slice(0, mostCarried)
}
