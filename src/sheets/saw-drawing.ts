import type { CutBar } from "../kernels/cutting/problem.ts"
import { textSize } from "../kernels/drawing/lettering.ts"
import type { Drawing, Shape } from "../kernels/drawing/shapes.ts"
import { type Mm, mmText } from "../kernels/units.ts"
import type { EndCut, Piece } from "../trades/trade.ts"

/** A length of the plan with its place in the sawing order, from 1. */
export interface NumberedBar {
  bar: CutBar
  number: number
}

/** What lengths are drawn from. */
export interface BarsTask {
  bars: readonly NumberedBar[]
  pieces: ReadonlyMap<string, Piece>
  kerf: Mm
  /** The longest length of the profile: all are drawn to one scale. */
  longest: Mm
  name: string
}

/** On paper, mm: room for the longest length, depth of a length, distance from one to the next, slant of a sawn end, lettering. */
const roomForLongest = 164
const depth = 10
const rowStep = 14.5
const slant = 2.4
const lettering = 2.5
const figure = 3.5
const lineOver = 2.1
const lineUnder = 2.4
/** White left between a text and the ends of its piece, mm on paper. */
const clear = 1.2

/**
 * Each length as a strip, one under the other, all to one scale: its pieces with mark and length, ends sawn at an angle slanted, saw
 * cuts left open, the offcut grey with its length. Millimetres on paper, so that it is set at full size.
 */
export function barsDrawing({ bars, pieces, kerf, longest, name }: BarsTask): Drawing {
  const scale = roomForLongest / longest
  const shapes = bars.flatMap(({ bar, number }, row) =>
    barShapes(bar, { number, y: -row * rowStep, scale, kerf, pieces }),
  )
  return {
    title: `Lengths of ${name}`,
    description: `${bars.length} lengths with their pieces in sawing order; the same as the cut list below it.`,
    shapes,
  }
}

interface Row {
  number: number
  y: number
  scale: number
  kerf: Mm
  pieces: ReadonlyMap<string, Piece>
}

function barShapes(bar: CutBar, { number, y, scale, kerf, pieces }: Row): Shape[] {
  const shapes: Shape[] = [
    {
      kind: "box",
      at: { x: 0, y },
      width: bar.length * scale,
      height: depth,
      stroke: { width: 0.18 },
      fill: "light",
    },
    {
      kind: "text",
      at: { x: -2, y: y + depth / 2 },
      text: String(number),
      height: figure,
      anchor: "end",
      bold: true,
      fixed: true,
    },
  ]
  let x = bar.endTrim
  for (const mark of bar.pieces) {
    const piece = pieces.get(mark)
    if (!piece) continue
    shapes.push(...pieceShapes(piece, { from: x * scale, to: (x + piece.length) * scale, y }))
    x += piece.length + kerf
  }
  const end = (bar.length - bar.endTrim) * scale
  return [...shapes, ...offcutText(bar, { from: end - bar.offcut * scale, to: end, y })]
}

interface Place {
  from: number
  to: number
  y: number
}

function pieceShapes(piece: Piece, { from, to, y }: Place): Shape[] {
  const most = (to - from) / (2 * 2)
  const lean = (end: EndCut) => (end.setting === 0 ? 0 : Math.min(slant, most))
  const [left, right] = [lean(piece.left), lean(piece.right)]
  const outline: Shape = {
    kind: "polygon",
    points: [
      { x: from, y },
      { x: to, y },
      { x: to - right, y: y + depth },
      { x: from + left, y: y + depth },
    ],
    stroke: { width: 0.35 },
    fill: "white",
  }
  return [outline, ...pieceTexts(piece, { from, to, y })]
}

/** Mark over length where both fit across; on end where they do not; the mark alone on end in the narrowest. */
function pieceTexts(piece: Piece, { from, to, y }: Place): Shape[] {
  const middle = { x: (from + to) / 2, y: y + depth / 2 }
  const length = mmText(piece.length)
  const width = Math.max(textSize(piece.mark, lettering).width, textSize(length, figure, true).width)
  const text = (x: number, at: number, words: string, height: number, angle = 0): Shape => ({
    kind: "text",
    at: { x, y: at },
    text: words,
    height,
    bold: height === figure,
    fixed: true,
    ...(angle === 0 ? {} : { angle }),
  })
  if (width + 2 * clear <= to - from)
    return [
      text(middle.x, middle.y + lineOver, piece.mark, lettering),
      text(middle.x, middle.y - lineUnder, length, figure),
    ]
  const upright = 90
  const short = piece.mark.split("-").slice(1).join("-")
  if (to - from >= lettering + figure + clear)
    return [
      text(middle.x - (figure + clear) / 2, middle.y, short, lettering, upright),
      text(middle.x + (lettering + clear) / 2, middle.y, length, lettering, upright),
    ]
  return to - from > lettering + clear / 2 ? [text(middle.x, middle.y, short, lettering, upright)] : []
}

function offcutText(bar: CutBar, { from, to, y }: Place): Shape[] {
  const length = mmText(Math.floor(bar.offcut))
  const words = bar.keep ? `keep ${length}` : length
  const { width } = textSize(words, lettering)
  if (width + clear > to - from) return []
  return [
    {
      kind: "text",
      at: { x: (from + to) / 2, y: y + depth / 2 },
      text: words,
      height: lettering,
      fixed: true,
    },
  ]
}
