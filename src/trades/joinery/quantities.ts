import { fixed } from "../../kernels/units.ts"
import type { Piece, Quantity, Task } from "../trade.ts"
import type { JoineryInputs } from "./inputs.ts"
import { skirtedLength } from "./skirting.ts"

/** Metres of each product by what it is for, and adhesive for the skirting. */
export function joineryQuantities(
  task: Task<JoineryInputs>,
  groups: readonly { what: string; pieces: readonly Piece[] }[],
  skirtings: readonly Piece[],
): Quantity[] {
  return [
    ...groups.flatMap(({ what, pieces }) => lengthsOf(pieces, { room: task.room.id, what })),
    ...adhesive(task, skirtings),
  ]
}

function lengthsOf(pieces: readonly Piece[], of: { room: string; what: string }): Quantity[] {
  return [...new Set(pieces.map((piece) => piece.product))].map((product): Quantity => {
    const own = pieces.filter((piece) => piece.product === product)
    const run = skirtedLength(own) / 1000
    return {
      trade: "joinery",
      room: of.room,
      what: of.what,
      product,
      net: run,
      gross: run,
      unit: "m",
      from: `${own.length} ${own.length === 1 ? "piece" : "pieces"}, cut to the saw sheet`,
    }
  })
}

function adhesive({ room, job }: Task<JoineryInputs>, skirtings: readonly Piece[]): Quantity[] {
  const product = job.chosen("grab-adhesive")
  if (skirtings.length === 0 || product === undefined) return []
  const run = skirtedLength(skirtings) / 1000
  const tubes = run / job.rules.value("joinery-adhesive-run")
  return [
    {
      trade: "joinery",
      room: room.id,
      what: "Grab adhesive",
      product,
      net: tubes,
      gross: tubes,
      unit: "nr",
      from: `${fixed(run, 2)} m of skirting at ${job.rules.value("joinery-adhesive-run")} m a tube`,
    },
  ]
}
