import { lengthOf, type Offcut } from "./layout/boards.ts"
import type { FloorLayout } from "./rows.ts"

/** Offcuts carried from room to room at most: more nobody keeps in order on site. */
const mostCarried = 6

/**
 * Offcuts in hand once one more room is laid, the longest of those that can begin or end a row: what it cut into is gone, what its own rows left is there, each with
 * the room that opened its board and marked with the room whose row left it, `A1 3R`.
 * @param before in hand when the room was begun
 */
export function handAfter(before: readonly Offcut[], id: string, layout: FloorLayout): Offcut[] {
  const spent = layout.brought.map((offcut) => offcut.mark)
  const own = layout.offcuts.map((offcut) => ({
    ...offcut,
    room: offcut.room ?? id,
    mark: `${id} ${offcut.mark}`,
  }))
  return [...before.filter((offcut) => !spent.includes(offcut.mark)), ...own]
    .filter((offcut) => lengthOf(offcut) >= layout.limits.leastEnd)
    .sort((a, b) => lengthOf(b) - lengthOf(a) || (a.mark < b.mark ? -1 : 1))
    .slice(0, mostCarried)
}

/** The room whose row left an offcut that was brought, by its mark. */
export function leftBy(offcut: Offcut): string {
  return offcut.mark.slice(0, offcut.mark.lastIndexOf(" "))
}
