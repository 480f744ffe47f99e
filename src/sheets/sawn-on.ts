import type { CutBar } from "../kernels/cutting/problem.ts"
import type { Mm } from "../kernels/units.ts"
import type { House } from "../survey/room.ts"
import type { Piece } from "../trades/trade.ts"

/**
 * The storey a length is sawn on: the lowest where it is too long for the stair and a piece of it goes up; else the storey of its
 * pieces, the lower one if they go to several. Null where no room of its pieces is surveyed.
 */
export function sawnOn(
  bar: CutBar,
  { pieces, house, longest }: { pieces: ReadonlyMap<string, Piece>; house: House; longest: Mm },
): { name: string; tooLong: boolean } | null {
  const rooms = new Set(bar.pieces.map((mark) => pieces.get(mark)?.room))
  const storeys = house.storeys.filter((storey) =>
    house.rooms.some((room) => rooms.has(room.id) && room.storey.id === storey.id),
  )
  const lowest = house.storeys[0]
  const first = storeys[0]
  if (!lowest || !first) return null
  const goesUp = storeys.some((storey) => storey.id !== lowest.id)
  const tooLong = goesUp && bar.length > longest
  return { name: tooLong ? lowest.name : first.name, tooLong }
}
