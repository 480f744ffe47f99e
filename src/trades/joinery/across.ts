import type { SheetModel } from "../../kernels/paper.ts"
import type { Room } from "../../survey/room.ts"
import { type JobFacts, noWork, type Work } from "../trade.ts"
import { stairFindings } from "./stairs/findings.ts"
import { stairSheet } from "./stairs/sheet.ts"
import { type StairSeen, stairsOf } from "./stairs/stair.ts"
import { stairCautions } from "./stairs/steps.ts"

/** The stairs of the house: a sheet each, with every rise before and after finishes, and what building control is to be asked. */
export async function joineryAcross(
  job: JobFacts,
  rooms: { room: Room; work: Work }[],
): Promise<{ work: Work; sheets: SheetModel[] }> {
  const stairs = stairsOf(job, rooms)
  const pieces = rooms.flatMap(({ work }) => work.pieces)
  const sheets = stairs.map((seen) => {
    const own = pieces.filter((piece) => piece.mark.includes(`-${seen.stair.id}-`))
    const cautions = stairCautions(seen.stair.openEdge > 0 ? [seen.stair] : [])
    return stairSheet({ seen, pieces: own, rules: job.rules, cautions })
  })
  return {
    work: {
      ...noWork(),
      findings: stairs.flatMap((seen) => stairFindings(seen, job.rules)),
      rests: [...new Set(sheets.flatMap((sheet) => sheet.rests))],
      results: { stairs: Object.fromEntries(stairs.map((seen) => [seen.stair.id, stairResult(seen)])) },
    },
    sheets,
  }
}

/** Tenths are kept. */
const tenths = 10

function stairResult({ rises, below, above }: StairSeen): Record<string, unknown> {
  const rounded = (value: number) => Math.round(value * tenths) / tenths
  return {
    below,
    above,
    before: rises.map((rise) => rounded(rise.before)),
    after: rises.map((rise) => rounded(rise.after)),
  }
}
