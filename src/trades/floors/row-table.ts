import type { Block, Row } from "../../kernels/paper.ts"
import { type Mm, mmText } from "../../kernels/units.ts"
import { isMarkOf, lengthOf } from "./layout/boards.ts"
import type { Notch } from "./layout/pieces.ts"
import type { FloorPlan } from "./plan-floor.ts"
import type { FloorLayout, LaidPiece, LaidRun } from "./rows.ts"

/** Ends leaning less than this over a row are cut square, mm. */
const squareWithin: Mm = 2
/** Offcuts not used later are kept from this length up, mm. */
const worthKeeping: Mm = 300
/** Rips that differ by less from one end to the other are parallel, mm. */
const parallelWithin: Mm = 1

/** Offcuts that a later room takes: its id by their mark here. */
export type GoesTo = ReadonlyMap<string, string>

/**
 * Row by row in laying order: widths at both ends, start, whole boards, finish, where each comes from and what is left over.
 * @param goesTo offcuts that a later room takes
 */
export function rowTable({ layout }: FloorPlan, goesTo: GoesTo = new Map()): Block {
  return {
    kind: "table",
    caption: "Rows in laying order, pieces left to right facing the first row's wall",
    columns: [
      { label: "Row", as: "mark", width: 0.8 },
      { label: "Wide, left", as: "figure", width: 1 },
      { label: "Wide, right", as: "figure", width: 1 },
      { label: "Start", as: "figure", width: 1.1 },
      { label: "from", width: layout.board.mix ? 1.6 : 1.1 },
      { label: "Whole", as: "figure", width: layout.board.mix ? 1.6 : 1.2 },
      { label: "Finish", as: "figure", width: 1.1 },
      { label: "from", width: layout.board.mix ? 1.6 : 1.1 },
      { label: "Keep, marked", width: 1.5 },
      { label: "Cut out, ends", width: 2.9 },
      { label: "Laid", as: "tick", width: 0.9 },
    ],
    rows: layout.rows.flatMap((row) => row.runs.map((run) => rowCells(layout, run, goesTo))),
    note: tableNote(layout),
  }
}

function tableNote(layout: FloorLayout): string {
  const marks = layout.rows.flatMap((row) =>
    row.runs.flatMap((run) => run.pieces.map((piece) => piece.source ?? "")),
  )
  const strips = marks.some((mark) => /[GT][LRMW]\d*$/.test(mark))
    ? " G: a strip that kept its groove, T: its tongue; W: both ends. Keep strips long: they lay a last or first row."
    : ""
  const mixed = layout.board.mix ? ", of the length given" : ""
  const brought = layout.brought.length > 0 ? " A mark with a room before it was carried in from there." : ""
  return `Lengths at the longer edge, mm. new: cut of a fresh board${mixed}; else the mark of the offcut.${brought} Rip to the width given over the whole length first, then cut out. L: left factory end kept, only ends a row. R: right factory end kept, only begins a row. M: two cut ends, only from wall to wall.${strips} Measure the gap again before each cut at a wall: the wall is right, not the sheet.`
}

/** Offcuts left at the end that no later room takes, longest first. */
export function leftOver(layout: FloorLayout, goesTo: GoesTo = new Map()): string {
  const left = layout.offcuts
    .filter((offcut) => lengthOf(offcut) >= worthKeeping && !goesTo.has(offcut.mark))
    .sort((a, b) => lengthOf(b) - lengthOf(a))
  return left.length === 0
    ? "none"
    : left.map((offcut) => `${offcut.mark} ${mmText(lengthOf(offcut))}`).join(", ")
}

function rowCells(layout: FloorLayout, run: LaidRun, goesTo: GoesTo): Row {
  const single = run.pieces.length === 1 ? run.pieces[0]! : undefined
  const start = single ?? run.pieces[0]!
  const finish = single ? undefined : run.pieces.at(-1)!
  return {
    cells: [
      run.name,
      widthText(layout, run.widths.left),
      widthText(layout, run.widths.right),
      lengthText(start),
      sourceText(layout, start),
      wholesText(layout, run),
      finish ? lengthText(finish) : "wall to wall",
      finish ? sourceText(layout, finish) : "",
      keptText(layout, run, goesTo),
      [...endTexts(run), ...notchTexts(layout, run)].join("; "),
      "",
    ],
  }
}

/** How many whole boards (of a mix: how long, left to right), and which of them are strips in hand. */
function wholesText(layout: FloorLayout, run: LaidRun): string {
  const wholes = run.pieces.filter((piece) => piece.role === "whole")
  if (wholes.length === 0) return ""
  if (layout.board.mix)
    return wholes.map((piece) => [lengthText(piece), piece.source].filter(Boolean).join(" of ")).join(", ")
  const strips = wholes.flatMap((piece) => piece.source ?? [])
  return strips.length > 0 ? `${wholes.length} (${strips.join(", ")})` : String(wholes.length)
}

function widthText(layout: FloorLayout, width: Mm): string {
  return width >= layout.board.width - parallelWithin ? "full" : mmText(width)
}

function lengthText(piece: LaidPiece): string {
  return mmText(piece.right - piece.left)
}

function sourceText(layout: FloorLayout, piece: LaidPiece): string {
  if (piece.source) return piece.source
  if (lengthOf(piece) >= piece.of) return "whole"
  return layout.board.mix ? `new ${mmText(piece.of)}` : "new"
}

/** Offcuts that this run leaves, whether used later or not. */
function keptText(layout: FloorLayout, run: LaidRun, goesTo: GoesTo): string {
  const cut = layout.rows
    .flatMap((row) => row.runs.flatMap((other) => other.pieces))
    .map((piece) => piece.source)
  const used = [...new Set(cut)].filter((mark): mark is string => mark !== null && isMarkOf(mark, run.name))
  const left = layout.offcuts
    .filter((offcut) => isMarkOf(offcut.mark, run.name))
    .map(({ mark }) => `${mark} (${goesTo.has(mark) ? `to ${goesTo.get(mark)}` : "spare"})`)
  return [...used, ...left].join(", ")
}

function endTexts(run: LaidRun): string[] {
  const text = (end: "left" | "right") => {
    const lean = run.leans[end]
    if (Math.abs(lean) <= squareWithin) return []
    const longerFar = end === "right" ? lean > 0 : lean < 0
    return [`${end} end ${mmText(Math.abs(lean))} longer at the ${longerFar ? "far" : "near"} edge`]
  }
  return [...text("left"), ...text("right")]
}

function notchTexts(layout: FloorLayout, run: LaidRun): string[] {
  return run.pieces.flatMap((piece, index) => {
    const usual = widthBetween(run, piece)
    const isOther = (["left", "right"] as const).some(
      (end) => Math.abs(piece.rip[end] - usual[end]) > squareWithin,
    )
    const rip = isOther ? [`rip it ${ripText(layout, piece.rip)}, whole length`] : []
    const cuts = piece.notches.map((notch) => notchText(notch, piece))
    if (rip.length + cuts.length === 0) return []
    return [`${nameOf(run, index)}: ${[...rip, ...cuts].join("; then ")}`]
  })
}

/** Which piece of a run, in words: start, whole 1, finish. */
function nameOf(run: LaidRun, index: number): string {
  const { role } = run.pieces[index]!
  if (role === "single") return "it"
  const wholes = run.pieces.filter((piece) => piece.role === "whole").length
  return role === "whole" && wholes > 1 ? `whole ${index}` : role
}

/** The run's own rip carried to the ends of one piece. */
function widthBetween(run: LaidRun, piece: LaidPiece): { left: Mm; right: Mm } {
  const at = (x: Mm) =>
    run.widths.left + ((run.widths.right - run.widths.left) * (x - run.left)) / (run.right - run.left)
  return { left: at(piece.left), right: at(piece.right) }
}

function ripText(layout: FloorLayout, { left, right }: { left: Mm; right: Mm }): string {
  const [first, last] = [widthText(layout, left), widthText(layout, right)]
  return first === last
    ? `${first}${first === "full" ? " width" : " wide"}`
    : `${first} left to ${last} right`
}

function notchText(notch: Notch, piece: LaidPiece): string {
  const { left, right } = notch.depth
  const length = piece.right - piece.left
  const isWhole = notch.from < parallelWithin && notch.to > length - parallelWithin
  const from = isWhole ? "whole length" : `${mmText(notch.from)} to ${mmText(notch.to)}`
  if (notch.edge === "inside") return `${from}, hole ${mmText(left)} to ${mmText(right)} from the near edge`
  const deep =
    Math.abs(left - right) <= squareWithin
      ? mmText(Math.max(left, right))
      : `${mmText(left)} running to ${mmText(right)}`
  return `${from}, ${deep} off the ${notch.edge} edge`
}
