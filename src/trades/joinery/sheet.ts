import type { Block, SheetModel } from "../../kernels/paper.ts"
import { fixed, mmText } from "../../kernels/units.ts"
import { datumText } from "../datum.ts"
import type { EndCut, Piece, Task, Work } from "../trade.ts"
import type { JoineryInputs } from "./inputs.ts"

const words: Record<EndCut["as"], string> = {
  square: "square",
  scribed: "scribe",
  "internal-mitre": "mitre",
  "external-mitre": "external mitre",
  "against-architrave": "square to architrave",
  return: "return",
  scarf: "scarf",
}

/** The joinery sheet of a room: each piece by wall with its long point and both ends, and how it is fixed. */
export function joinerySheets(task: Task<JoineryInputs>, work: Work): SheetModel[] {
  if (work.pieces.length === 0) return []
  const { room, job } = task
  return [
    {
      kind: "joinery",
      title: "Skirting and architraves",
      purpose: "Find the piece by its mark, fix it on its wall; tape the wall again before sawing.",
      room: room.id,
      trade: "joinery",
      audience: ["trade", "office"],
      hosted: true,
      orientation: "portrait",
      datum: datumText(room),
      blocks: [
        {
          kind: "figures",
          items: [
            { label: "Skirting", value: fixed(Number(work.results.skirtingRun) / 1000, 2), unit: "m" },
            { label: "Pieces", value: String(work.pieces.length) },
            {
              label: "Margin at linings",
              value: String(job.rules.value("joinery-architrave-margin")),
              unit: "mm",
            },
            { label: "Longest up the stair", value: mmText(job.carry.longest), unit: "mm" },
          ],
        },
        pieceTable(work.pieces),
        {
          kind: "checks",
          caption: "Before and after fixing",
          items: [
            { text: "Floor laid, gap clear all round, no glue or plaster in it" },
            { text: "Boards primed on all faces, sawn ends sealed" },
            { text: "Walls scanned; pipes and cables marked" },
            { text: "Skirting fixed to the wall only, nothing through the floor" },
            { text: "Joints over a fixing, none within reach of a corner" },
            { text: "Timber moisture before painting", write: "%" },
          ],
        },
        { kind: "sign", roles: ["Joiner", "Foreman"] },
      ],
      rests: work.rests,
    },
  ]
}

function pieceTable(pieces: readonly Piece[]): Block {
  return {
    kind: "table",
    caption: "Pieces by wall",
    columns: [
      { label: "Mark", as: "mark", width: 17 },
      { label: "What", width: 26 },
      { label: "Long point", as: "figure", width: 13 },
      { label: "Short point", as: "figure", width: 12 },
      { label: "Left end", width: 14 },
      { label: "Right end", width: 14 },
      { label: "Fixed", as: "tick", width: 8 },
    ],
    rows: pieces.map((piece) => ({
      cells: [
        piece.mark,
        piece.what,
        mmText(piece.length),
        piece.shortPoint === undefined ? "" : mmText(piece.shortPoint),
        endText(piece.left),
        endText(piece.right),
        "",
      ],
    })),
    note: "Ends as you face the wall. Settings in degrees off square, to half a degree.",
  }
}

function endText({ as, setting }: EndCut): string {
  const half = Math.round(setting * 2) / 2
  return half === 0 ? words[as] : `${words[as]} ${fixed(half, half % 1 === 0 ? 0 : 1)}°`
}
