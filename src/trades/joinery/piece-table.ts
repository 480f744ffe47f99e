import type { Block } from "../../kernels/paper.ts"
import { fixed, mmText } from "../../kernels/units.ts"
import type { EndCut, Piece } from "../trade.ts"

const words: Record<EndCut["as"], string> = {
  square: "square",
  scribed: "scribe",
  "internal-mitre": "mitre",
  "external-mitre": "external mitre",
  "against-architrave": "square to architrave",
  return: "return",
  scarf: "scarf",
}

/** Pieces by mark with long and short points, both ends as one faces the wall, and a box for when they are fixed. */
export function pieceTable(pieces: readonly Piece[], caption: string): Block {
  return {
    kind: "table",
    caption,
    columns: [
      { label: "Mark", as: "mark", width: 14 },
      { label: "Piece", width: 25 },
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
    note: "Ends as you face the wall. Settings in degrees off square, to half a degree. At a scarf the right-hand board laps over the left.",
  }
}

/** An end cut for the fixer: its name, and the setting to half a degree where it is not square. */
export function endText({ as, setting }: EndCut): string {
  const half = Math.round(setting * 2) / 2
  if (half === 0) return words[as]
  const name = as === "square" ? "bevel" : words[as]
  return `${name} ${fixed(half, half % 1 === 0 ? 0 : 1)}°`
}
