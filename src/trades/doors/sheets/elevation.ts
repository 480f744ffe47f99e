import type { Drawing, Shape } from "../../../kernels/drawing/shapes.ts"
import type { Point } from "../../../kernels/polygon/point.ts"
import type { Mm } from "../../../kernels/units.ts"
import type { Fitted, HungDoor } from "../hanging/hung-door.ts"
import { halfText } from "../messages.ts"

/** Distance of a dimension line from the leaf on paper, and between two of them, mm. */
const firstLine: Mm = 7
const lineStep: Mm = 7
/** The same on the lock side, where the figures stand over the lining. */
const lockLine: Mm = 9
/** Plan beside the elevation: its distance, its level, and the wall drawn each side of the opening, real mm. */
const planAside: Mm = 2000
const planLevel: Mm = 1500
const pierWidth: Mm = 160
/** Width of lining drawn where it is not known, real mm. */
const nominalLining: Mm = 30
const hingeWidth: Mm = 34
const knobRadius: Mm = 40

/** Elevation of a leaf as hung, seen from where the knuckles show, figures from its top; beside it the plan with its swing. */
export function leafDrawing(hung: HungDoor, fitted: Fitted): Drawing {
  const { door } = hung
  const left = door.hinges !== "right"
  const shapes = [
    ...frame(fitted),
    ...leaf(fitted, left),
    ...hingeShapes(fitted, left),
    ...latch(fitted, left),
    ...plan(hung, fitted, left),
    { kind: "scale-bar", at: { x: box(fitted).opening + planAside, y: 0 } } as const,
  ]
  return {
    title: `Door ${door.id}: leaf as hung`,
    description: `Elevation seen from where the knuckles show, hinges on the ${left ? "left" : "right"}, with figures from the top of the leaf, and plan of the swing.`,
    shapes,
  }
}

/** The leaf's corner at the floor line: x from the left of the opening, y from the highest finished floor. */
function box(fitted: Fitted): { x: Mm; y: Mm; width: Mm; height: Mm; opening: Mm; head: Mm } {
  const point = fitted.across[0]!
  const up = fitted.up[0]!
  const { width, height } = fitted.size
  return { x: point.hingeGap, y: up.undercut, width, height, opening: point.opening, head: up.opening }
}

function frame(fitted: Fitted): Shape[] {
  const { opening, head } = box(fitted)
  const thick = fitted.lining?.thickness ?? nominalLining
  const stroke = { width: 0.35 } as const
  const upright = (x: Mm): Shape => ({
    kind: "box",
    at: { x, y: 0 },
    width: thick,
    height: head + thick,
    stroke,
    fill: "light",
  })
  return [
    upright(-thick),
    upright(opening),
    { kind: "box", at: { x: 0, y: head }, width: opening, height: thick, stroke, fill: "light" },
    line({ x: -5 * thick, y: 0 }, { x: opening + 5 * thick, y: 0 }, 0.7),
  ]
}

function leaf(fitted: Fitted, left: boolean): Shape[] {
  const { y, width, height } = box(fitted)
  const x = leafX(fitted, left)
  return [
    { kind: "box", at: { x, y }, width, height, stroke: { width: 0.5 }, fill: "white" },
    dimension({ x, y }, { x: x + width, y }, -(firstLine + 1), halfText(width)),
    dimension(
      { x: left ? x + width : x, y: y + height },
      { x: left ? x + width : x, y },
      (left ? 1 : -1) * (lockLine + lineStep),
      halfText(height),
    ),
  ]
}

function leafX(fitted: Fitted, left: boolean): Mm {
  const point = fitted.across[0]!
  return left ? point.hingeGap : point.opening - point.hingeGap - fitted.size.width
}

function hingeShapes(fitted: Fitted, left: boolean): Shape[] {
  const { hinges } = fitted
  if (!hinges) return []
  const { y, width, height } = box(fitted)
  const edge = left ? leafX(fitted, left) : leafX(fitted, left) + width
  const top = y + height
  return hinges.tops.flatMap((from, n): Shape[] => [
    {
      kind: "box",
      at: { x: edge - hingeWidth / 2, y: top - from - hinges.length },
      width: hingeWidth,
      height: hinges.length,
      stroke: { width: 0.25 },
      fill: "black",
    },
    dimension(
      { x: edge, y: top },
      { x: edge, y: top - from },
      (left ? -1 : 1) * (firstLine + n * lineStep),
      halfText(from),
    ),
  ])
}

function latch(fitted: Fitted, left: boolean): Shape[] {
  const { y, width, height } = box(fitted)
  const { fromTop, backset } = fitted.latch
  const edge = left ? leafX(fitted, left) + width : leafX(fitted, left)
  const at = { x: left ? edge - backset : edge + backset, y: y + height - fromTop }
  return [
    { kind: "arc", centre: at, radius: knobRadius, from: 0, to: 360, stroke: { width: 0.5 } },
    line({ x: at.x - 2 * knobRadius, y: at.y }, { x: at.x + 2 * knobRadius, y: at.y }, 0.18),
    dimension(
      { x: edge, y: y + height },
      { x: edge, y: at.y },
      (left ? 1 : -1) * lockLine,
      halfText(fromTop),
    ),
  ]
}

/** Plan beside the elevation: the room the leaf swings into lies below. */
function plan(hung: HungDoor, fitted: Fitted, left: boolean): Shape[] {
  const { opening } = box(fitted)
  const deep = hung.door.wall
  const from = opening + planAside
  const reach = fitted.size.width
  const thick = fitted.leaf.thickness
  const gap = fitted.across[0]!.hingeGap
  const hinge = { x: left ? from + gap : from + opening - gap, y: planLevel }
  const pier = (x: Mm): Shape => ({
    kind: "box",
    at: { x, y: planLevel },
    width: pierWidth,
    height: deep,
    stroke: { width: 0.5 },
    fill: "mid",
  })
  const openLeaf: Shape = {
    kind: "box",
    at: { x: left ? hinge.x : hinge.x - thick, y: planLevel - reach },
    width: thick,
    height: reach,
    stroke: { width: 0.35 },
    fill: "white",
  }
  const swing: Shape = {
    kind: "arc",
    centre: hinge,
    radius: reach,
    from: left ? 270 : 180,
    to: left ? 360 : 270,
    stroke: { width: 0.18, dash: "dashed" },
  }
  const knuckle: Shape = { kind: "arc", centre: hinge, radius: 30, from: 0, to: 360, stroke: { width: 0.7 } }
  const middle = from + opening / 2
  return [
    pier(from - pierWidth),
    pier(from + opening),
    openLeaf,
    swing,
    knuckle,
    text({ x: middle, y: planLevel + deep + 160 }, `plan: hinges on the ${left ? "left" : "right"}`),
    text({ x: middle, y: planLevel - reach - 200 }, hung.home.name),
  ]
}

function line(from: Point, to: Point, width: 0.18 | 0.7): Shape {
  return { kind: "line", from, to, stroke: { width } }
}

function text(at: Point, words: string): Shape {
  return { kind: "text", at, text: words, height: 2.5, masked: true }
}

function dimension(from: Point, to: Point, offset: Mm, words: string): Shape {
  return { kind: "dimension", from, to, offset, text: words }
}
