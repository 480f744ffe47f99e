import type { Bounds } from "../polygon/measure.ts"
import { cosSin, type Point } from "../polygon/point.ts"
import { type Mm, roundHalfUp } from "../units.ts"
import type { PlacedLabel } from "./labels.ts"
import { type Layout, layoutDrawing } from "./layout.ts"
import { fontSize, letterDepth, lineStep, linesOf } from "./lettering.ts"
import { type ArcMark, boxCorners, type Mark } from "./marks.ts"
import type { Scale } from "./scale.ts"
import type { Dash, Drawing, Fill, Stroke } from "./shapes.ts"

/** A drawing as SVG with its true size on paper. */
export interface DrawingSvg {
  svg: string
  widthMm: Mm
  heightMm: Mm
}

const fills: Record<Fill, string> = {
  none: "none",
  white: "#fff",
  light: "#e8e8e8",
  mid: "#c0c0c0",
  black: "#000",
}
/** Dashes and gaps as multiples of 0.5 mm, so that they read the same at any width of line. */
const dashes: Record<Dash, string> = {
  continuous: "",
  dashed: "2.5 1.2",
  chain: "5 1 0.6 1",
  dotted: "0.6 1",
}

/**
 * A drawing as SVG, true to scale when printed at the size it names. Black strokes, greys only as fills.
 * Lettering takes the font of the page round it. Figures are rounded to 1/1000 mm, so the same drawing gives the same bytes.
 * @param options.scale real length over paper length (20 for 1:20)
 * @param options.id    a name unique on the page; with it title and description are tied to the picture by id
 */
export function drawingSvg(drawing: Drawing, options: { scale: Scale; id?: string }): DrawingSvg {
  return layoutSvg(drawing, layoutDrawing(drawing, options.scale), options.id)
}

/** A drawing that is already laid out, as SVG. See `drawingSvg`. */
export function layoutSvg(drawing: Drawing, layout: Layout, id?: string): DrawingSvg {
  const { box } = layout
  const widthMm = roundHalfUp(box.right - box.left, 3)
  const heightMm = roundHalfUp(box.top - box.bottom, 3)
  const named = id ? ` aria-labelledby="${escaped(id)}-t" aria-describedby="${escaped(id)}-d"` : ""
  const part = (suffix: string) => (id ? ` id="${escaped(id)}-${suffix}"` : "")
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthMm}mm" height="${heightMm}mm" viewBox="0 0 ${widthMm} ${heightMm}" role="img"${named}>`,
    `<title${part("t")}>${escaped(drawing.title)}</title>`,
    `<desc${part("d")}>${escaped(drawing.description)}</desc>`,
    ...layout.marks.map((mark) => markSvg(mark, box)),
    ...layout.labels.map((label) => labelSvg(label, box)),
    "</svg>",
  ].join("\n")
  return { svg, widthMm, heightMm }
}

/** Text made safe inside XML: markup signs are escaped, signs that XML 1.0 does not allow are left out. */
export function escaped(text: string): string {
  const allowed = [...text].filter((letter) => {
    const code = letter.codePointAt(0)!
    const control = code < 0x20 && code !== 0x9 && code !== 0xa && code !== 0xd
    const surrogate = code >= 0xd800 && code <= 0xdfff
    return !control && !surrogate && code !== 0xfffe && code !== 0xffff
  })
  return allowed
    .join("")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    .replaceAll("'", "&#39;")
}

function markSvg(mark: Mark, box: Bounds): string {
  if (mark.kind === "arc") return arcSvg(mark, box)
  const path = mark.lines
    .map((line) => `M${line.map((point) => pair(point, box)).join("L")}${mark.closed ? "Z" : ""}`)
    .join("")
  const rule = mark.closed && mark.lines.length > 1 ? ' fill-rule="evenodd"' : ""
  return `<path d="${path}" fill="${fills[mark.fill]}"${rule}${strokeSvg(mark.stroke)}/>`
}

function arcSvg(arc: ArcMark, box: Bounds): string {
  const radius = number(arc.radius)
  const centre = onPage(arc.centre, box)
  if (arc.to - arc.from >= 360) {
    return `<circle cx="${number(centre.x)}" cy="${number(centre.y)}" r="${radius}" fill="none"${strokeSvg(arc.stroke)}/>`
  }
  const [from, to] = [arc.from, arc.to].map((angle) => {
    const { cos, sin } = cosSin(angle)
    return pair({ x: arc.centre.x + arc.radius * cos, y: arc.centre.y + arc.radius * sin }, box)
  })
  const large = arc.to - arc.from > 180 ? 1 : 0
  return `<path d="M${from}A${radius} ${radius} 0 ${large} 0 ${to}" fill="none"${strokeSvg(arc.stroke)}/>`
}

function strokeSvg(stroke: Stroke | undefined): string {
  if (!stroke) return ""
  const dash = dashes[stroke.dash ?? "continuous"]
  return ` stroke="#000" stroke-width="${stroke.width}"${dash ? ` stroke-dasharray="${dash}"` : ""}`
}

function labelSvg(label: PlacedLabel, box: Bounds): string {
  const middle = onPage(label.at, box)
  const lines = linesOf(label.text)
  const top = middle.y - label.box.height / 2
  const turn =
    label.angle === 0
      ? ""
      : ` transform="rotate(${number(-label.angle)} ${number(middle.x)} ${number(middle.y)})"`
  const bold = label.bold ? ' font-weight="bold"' : ""
  const written = lines.map((line, index) => {
    const base = top + label.height + index * lineStep(label.height)
    return `<tspan x="${number(middle.x)}" y="${number(base)}">${escaped(line)}</tspan>`
  })
  const ground = label.masked ? groundSvg(label, box) : ""
  return `${ground}<text font-size="${number(fontSize(label.height))}" text-anchor="middle"${bold}${turn}>${written.join("")}</text>`
}

function groundSvg(label: PlacedLabel, box: Bounds): string {
  const corners = boxCorners({ ...label.box, height: label.box.height + letterDepth(label.height) })
  return `<path d="M${corners.map((corner) => pair(corner, box)).join("L")}Z" fill="#fff"/>`
}

function onPage(point: Point, box: Bounds): Point {
  return { x: point.x - box.left, y: box.top - point.y }
}

function pair(point: Point, box: Bounds): string {
  const { x, y } = onPage(point, box)
  return `${number(x)} ${number(y)}`
}

function number(value: number): string {
  return String(roundHalfUp(value, 3))
}
