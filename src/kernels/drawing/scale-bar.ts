import type { Point } from "../polygon/point.ts"
import type { Mm } from "../units.ts"
import { textSize } from "./lettering.ts"
import { type Label, middleOf, type PathMark } from "./marks.ts"
import { type Scale, scaleText } from "./scale.ts"

/** A bar is at most this long on paper. */
const longest: Mm = 60
/** Height of the bar and of its figures on paper. */
const barHeight: Mm = 1.6
const lettering: Mm = 2.5
/** Free space between the bar and its figures. */
const gap: Mm = 0.8
/** Parts a bar may be divided into, and lengths of one part of the real thing, mm. */
const partLengths: readonly Mm[] = [5000, 2000, 1000, 500, 200, 100, 50, 20, 10, 5]
const parts = 4

/** A scale bar on paper from its lower left corner: blocks black and white in turn, figures above, the scale beside it. */
export function scaleBarMarks(at: Point, scale: Scale): { marks: PathMark[]; labels: Label[] } {
  const part = partLengths.find((length) => (length * parts) / scale <= longest) ?? partLengths.at(-1)!
  const step = part / scale
  const marks = Array.from({ length: parts }, (_, index) => block(at, index * step, step, index % 2 === 0))
  const figures = [0, parts / 2, parts].map((index) =>
    fixedLabel(
      index === parts ? lengthText(part * index) : figureText(part * index, part * parts),
      { x: at.x + index * step, y: at.y + barHeight + gap + lettering / 2 },
      lettering,
    ),
  )
  const words = scaleText(scale)
  const last = figures.at(-1)!
  const end = last.at.x + textSize(last.text, lettering).width / 2
  const beside = { x: end + 2 * gap, y: at.y + barHeight / 2 }
  const name = fixedLabel(words, middleOf(beside, textSize(words, lettering).width, "start", 0), lettering)
  return { marks, labels: [...figures, name] }
}

function block(at: Point, offset: Mm, width: Mm, black: boolean): PathMark {
  const left = at.x + offset
  const corners = [
    { x: left, y: at.y },
    { x: left + width, y: at.y },
    { x: left + width, y: at.y + barHeight },
    { x: left, y: at.y + barHeight },
  ]
  const fill = black ? "black" : "white"
  return { kind: "path", lines: [corners], closed: true, stroke: { width: 0.18 }, fill, avoided: true }
}

function lengthText(length: Mm): string {
  return length >= 1000 ? `${length / 1000} m` : `${length} mm`
}

function figureText(length: Mm, whole: Mm): string {
  return whole >= 1000 ? String(length / 1000) : String(length)
}

function fixedLabel(text: string, at: Point, height: Mm): Label {
  return { at, text, height, angle: 0, bold: false, fixed: true, masked: false, leader: false, shifts: [] }
}
