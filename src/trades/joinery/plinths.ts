import type { Mm } from "../../kernels/units.ts"
import type { JobFacts, Piece, Quantity } from "../trade.ts"
import type { SetOfArchitraves } from "./architraves.ts"

/** Size of a plinth block, mm. */
export interface PlinthSize {
  width: Mm
  height: Mm
}

/** A block stands over the skirting and beside the architrave by the rulebook's margins. */
export function plinthSize(
  skirting: { width: Mm },
  architrave: { width: Mm },
  rules: JobFacts["rules"],
): PlinthSize {
  return {
    width: architrave.width + rules.value("joinery-plinth-wider"),
    height: skirting.width + rules.value("joinery-plinth-higher"),
  }
}

/** The sets with their outer edges moved out to the blocks, where the skirting then stops. */
export function outToPlinths(
  sets: readonly SetOfArchitraves[],
  plinth: PlinthSize,
  architrave: { width: Mm },
): SetOfArchitraves[] {
  const beyond = plinth.width - architrave.width
  return sets.map((set) => ({ ...set, outerFrom: set.outerFrom - beyond, outerTo: set.outerTo + beyond }))
}

/** Two blocks a doorway, cut from the length good chosen for them; none where none is chosen. */
export function plinthPieces(
  sets: readonly SetOfArchitraves[],
  { room, product, height }: { room: string; product: string | undefined; height: Mm },
): Piece[] {
  if (product === undefined) return []
  return sets.flatMap(({ door, wall }) =>
    [
      { letter: "L", side: "left" },
      { letter: "R", side: "right" },
    ].map(
      ({ letter, side }): Piece => ({
        mark: `${room}-${wall}-${door}P${letter}`,
        trade: "joinery",
        room,
        wall,
        product,
        what: `plinth block, ${side}, ${door}`,
        length: height,
        left: { as: "square", setting: 0 },
        right: { as: "square", setting: 0 },
        mayBeJointed: false,
      }),
    ),
  )
}

/** The blocks counted, where they are not cut from a length. */
export function plinthQuantity(room: string, sets: number, size: PlinthSize): Quantity {
  return {
    trade: "joinery",
    room,
    what: `Plinth blocks ${size.width} × ${size.height}`,
    product: null,
    net: 2 * sets,
    gross: 2 * sets,
    unit: "nr",
    from: `${sets} doorways, 2 blocks each`,
  }
}
