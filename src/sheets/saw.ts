import type { CutBar } from "../kernels/cutting/problem.ts"
import type { Drawing, Shape } from "../kernels/drawing/shapes.ts"
import type { Block, Row, SheetModel } from "../kernels/paper.ts"
import { fixed, mmText } from "../kernels/units.ts"
import type { CutList } from "../orders/orders.ts"
import type { EndCut, Piece } from "../trades/trade.ts"
import type { JobResult } from "./job-result.ts"

const endWords: Record<EndCut["as"], string> = {
  square: "square",
  scribed: "scribe",
  "internal-mitre": "internal mitre",
  "external-mitre": "external mitre",
  "against-architrave": "square to architrave",
  return: "return",
  scarf: "scarf",
}

/** The saw sheet: profile by profile and length by length in sawing order, each piece with its mark and saw settings. */
export function sawSheet(result: JobResult): SheetModel | null {
  const lists = result.orders.cutLists.filter((list) => list.plan.bars.length > 0)
  if (lists.length === 0) return null
  return {
    kind: "saw",
    title: "Saw sheet",
    purpose:
      "Saw length by length in this order; write the mark on the back of each piece; tape it on site before the last cut.",
    room: null,
    trade: null,
    audience: ["trade", "office"],
    hosted: true,
    orientation: "portrait",
    datum: "Long points, millimetres. Settings in degrees off square.",
    blocks: lists.flatMap((list) => listBlocks(list, result)),
    rests: ["saw-kerf", "saw-end-trim", "saw-offcut-keep"],
  }
}

function listBlocks(list: CutList, result: JobResult): Block[] {
  const { plan, product } = list
  const bars = plan.bars.map((bar, index) => ({ bar, number: index + 1 }))
  const waste = plan.bars.reduce((sum, bar) => sum + bar.offcut + bar.kerfs + 2 * bar.endTrim, 0)
  const total = plan.bars.reduce((sum, bar) => sum + bar.length, 0)
  const kerf = result.rules.value("saw-kerf")
  return [
    { kind: "heading", text: `${product.name}, ${product.thickness} × ${product.width}` },
    {
      kind: "figures",
      items: [
        { label: "Lengths to saw", value: String(plan.bars.length) },
        { label: "Pieces", value: String(list.pieces.length) },
        { label: "Offcuts and sawdust", value: fixed((100 * waste) / total, 1), unit: "%" },
        {
          label: plan.proven ? "Least cost" : "Within of least cost",
          value: plan.proven ? "proven" : `${fixed(100 * (plan.cost / plan.bound - 1), 1)} %`,
        },
      ],
    },
    {
      kind: "drawing",
      drawing: barsDrawing(bars, list, kerf),
      caption: `Lengths in sawing order; marks as on the back of the pieces. Saw cut ${kerf} mm allowed for.`,
    },
    {
      kind: "table",
      caption: "Cut list",
      columns: [
        { label: "Length", as: "figure", width: 9 },
        { label: "Mark", as: "mark", width: 15 },
        { label: "Cut to", as: "figure", width: 11 },
        { label: "What", width: 25 },
        { label: "Left end", width: 14 },
        { label: "Right end", width: 14 },
        { label: "Taped", as: "write", width: 12 },
        { label: "Sawn", as: "tick", width: 7 },
      ],
      rows: bars.flatMap(({ bar, number }) => barRows(bar, number, list)),
      note:
        list.cutBelow === null
          ? undefined
          : `No more than ${mmText(list.cutBelow)} goes up the stair: saw these lengths below.`,
    },
  ]
}

function barRows(bar: CutBar, number: number, list: CutList): Row[] {
  const name = bar.inHand ? "in hand" : mmText(bar.length)
  const head: Row = {
    as: "group",
    cells: [
      String(number),
      `${name} mm`,
      "",
      `offcut ${mmText(Math.floor(bar.offcut))}${bar.keep ? ", keep" : ""}`,
      "",
      "",
      "",
      "",
    ],
  }
  const rows = bar.pieces.map((mark): Row => {
    const piece = list.pieces.find((each) => each.mark === mark)!
    return {
      cells: ["", mark, mmText(piece.length), piece.what, endText(piece.left), endText(piece.right), "", ""],
    }
  })
  return [head, ...rows]
}

/** An end cut for the sawyer: its name, and the setting to half a degree where it is not square. */
export function endText(end: EndCut): string {
  const setting = Math.round(end.setting * 2) / 2
  return setting === 0
    ? endWords[end.as]
    : `${endWords[end.as]} ${fixed(setting, setting % 1 === 0 ? 0 : 1)}°`
}

/** Every length as a strip with its pieces and marks, one under the other. */
function barsDrawing(bars: { bar: CutBar; number: number }[], list: CutList, kerf: number): Drawing {
  const longest = Math.max(...bars.map(({ bar }) => bar.length))
  const step = longest / 14
  const depth = step * 0.55
  const shapes = bars.flatMap(({ bar, number }, row): Shape[] => {
    const y = -row * step
    let x = bar.endTrim
    const pieces = bar.pieces.flatMap((mark): Shape[] => {
      const piece = list.pieces.find((each) => each.mark === mark) as Piece
      const at = { x, y }
      x += piece.length + kerf
      const middle = { x: at.x + piece.length / 2, y: y + depth / 2 }
      return [
        { kind: "box", at, width: piece.length, height: depth, stroke: { width: 0.35 }, fill: "white" },
        { kind: "text", at: middle, text: mark, height: 2.5, fixed: true },
      ]
    })
    return [
      {
        kind: "box",
        at: { x: 0, y },
        width: bar.length,
        height: depth,
        stroke: { width: 0.18 },
        fill: "light",
      },
      ...pieces,
      {
        kind: "text",
        at: { x: -longest / 60, y: y + depth / 2 },
        text: String(number),
        height: 3.5,
        anchor: "end",
        bold: true,
        fixed: true,
      },
    ]
  })
  return {
    title: `Lengths of ${list.product.name}`,
    description: `${bars.length} lengths with their pieces in sawing order; the same as the cut list below.`,
    shapes: [...shapes, { kind: "scale-bar" }],
  }
}
