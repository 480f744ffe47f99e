import type { JobFacts, Piece } from "../../trade.ts"
import type { StairWork } from "../inputs.ts"

/** Letters for the marks of a stair's parts. */
const letters: Record<StairWork["parts"][number]["what"], string> = {
  nosing: "N",
  tread: "T",
  riser: "R",
  string: "S",
  newel: "P",
  handrail: "H",
  "base rail": "B",
  baluster: "K",
  guarding: "G",
}

/** The parts of a stair as pieces to saw, marked by stair and part; ends are cut to the stair itself, so they are listed square. */
export function stairPieces(works: readonly StairWork[], room: string, job: JobFacts): Piece[] {
  return works.flatMap(({ stair, parts }) => {
    const counts = new Map<string, number>()
    return parts.flatMap(({ what, product, lengths }) => {
      if (!job.product(product, "length")) return []
      return lengths.map((length): Piece => {
        const number = (counts.get(what) ?? 0) + 1
        counts.set(what, number)
        return {
          mark: `${room}-${stair}-${letters[what]}${number}`,
          trade: "joinery",
          room,
          product,
          what: `${what}, stair ${stair}`,
          length,
          left: { as: "square", setting: 0 },
          right: { as: "square", setting: 0 },
          mayBeJointed: false,
        }
      })
    })
  })
}
