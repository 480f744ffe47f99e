import { fitDrawing, layoutDrawing } from "../kernels/drawing/layout.ts"
import { scaleText } from "../kernels/drawing/scale.ts"
import { layoutSvg } from "../kernels/drawing/svg.ts"
import type { Block, Orientation } from "../kernels/paper.ts"
import type { Mm } from "../kernels/units.ts"

/** Paper left for the text area of a sheet, mm: A4 or A3 less its margins. */
export const textArea: Record<Orientation, { width: Mm; height: Mm }> = {
  portrait: { width: 180, height: 241 },
  landscape: { width: 267, height: 154 },
  "fold-out": { width: 390, height: 241 },
}

/** Most that a drawing takes of the height of a page unless its block says otherwise, so that its caption stays with it. */
const mostOfHeight: Mm = 165

type DrawingBlock = Extract<Block, { kind: "drawing" }>

/** A drawing as it is set on a sheet. */
export interface Drawn {
  svg: string
  widthMm: Mm
  scale: string
}

/** A drawing is laid out once, however many packs carry its sheet. */
const kept = new WeakMap<object, Map<string, Drawn>>()

/** A drawing block at the largest standard scale that fits its place on the sheet. */
export function drawn(block: DrawingBlock, orientation: Orientation, id: string): Drawn {
  const of = kept.get(block) ?? new Map<string, Drawn>()
  kept.set(block, of)
  const key = `${orientation} ${id}`
  const before = of.get(key)
  if (before) return before
  const now = laidOut(block, orientation, id)
  of.set(key, now)
  return now
}

function laidOut(block: DrawingBlock, orientation: Orientation, id: string): Drawn {
  const area = textArea[orientation]
  const paper = {
    widthMm: Math.min(block.maxWidth ?? area.width, area.width),
    heightMm: Math.min(block.maxHeight ?? mostOfHeight, area.height - 12),
  }
  const scale = block.scale ?? fitDrawing(block.drawing, paper)
  const { svg, widthMm } = layoutSvg(block.drawing, layoutDrawing(block.drawing, scale), id)
  return { svg, widthMm, scale: scaleText(scale) }
}
