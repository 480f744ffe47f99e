import { signedArea } from "../../../kernels/polygon/measure.ts"
import { distance } from "../../../kernels/polygon/point.ts"
import { edgesOf, type Region, type Ring } from "../../../kernels/polygon/region.ts"
import type { Mm } from "../../../kernels/units.ts"

/** One way to set the rows: where the joint lies from which whole rows count, and how well edges come out. */
export interface GridChoice {
  /** Joint lines lie at `joint` plus whole board widths, frame mm. */
  joint: Mm
  /** Missing width along edges below the least width, mm2: 0 where no row is too thin. */
  thin: number
  /** Distance from the balanced setting, mm. */
  off: Mm
}

/** An edge that runs with the rows, and on which side of it the floor lies. */
interface RowEdge {
  low: Mm
  high: Mm
  length: Mm
  floorAbove: boolean
}

/** Edges that rise less than this over their length run with the rows. */
const withRows = 0.15
/** Edges shorter than this (the cheeks of a doorway) do not decide where rows lie, mm. */
const minorEdge: Mm = 150
/** Settings are tried this far apart, mm. */
const step: Mm = 1
/** A joint line nearer to an edge than this counts as lying on it, mm. */
const onLine: Mm = 0.5

/**
 * Settings of the rows, best first: no row thinner than the least, then nearest to first and last row of equal width.
 * @param floor figures in the frame of the rows, gap taken off
 */
export function gridChoices(floor: readonly Region[], width: Mm, least: Mm): GridChoice[] {
  const edges = floor.flatMap((region) => rowEdges(region))
  const balanced = balancedJoint(edges, floor, width)
  const choices: GridChoice[] = []
  for (let shift = 0; shift < width; shift += step) {
    const joint = balanced + shift
    const off = Math.min(shift, width - shift)
    choices.push({ joint, thin: thinness(edges, joint, width, least), off })
  }
  return choices.sort((a, b) => a.thin - b.thin || a.off - b.off || a.joint - b.joint)
}

/**
 * Width of the first row where first and last row are to be equal: half of the remainder and one board.
 * @param depth from the first to the last edge, mm
 */
export function firstRowWidth(depth: Mm, width: Mm): Mm {
  if (depth <= width) return depth
  const remainder = depth - Math.floor((depth + onLine) / width) * width
  return remainder <= onLine ? width : (remainder + width) / 2
}

function balancedJoint(edges: readonly RowEdge[], floor: readonly Region[], width: Mm): Mm {
  const first = longest(edges.filter((edge) => edge.floorAbove))
  const last = longest(edges.filter((edge) => !edge.floorAbove))
  const ys = floor.flatMap((region) => region.outline.map((point) => point.y))
  const from = first ? first.low : Math.min(...ys)
  const to = last ? (last.low + last.high) / 2 : Math.max(...ys)
  return from + firstRowWidth(Math.max(to - from, 1), width)
}

function longest(edges: readonly RowEdge[]): RowEdge | undefined {
  return edges.reduce<RowEdge | undefined>(
    (best, edge) => (best === undefined || edge.length > best.length ? edge : best),
    undefined,
  )
}

function rowEdges(region: Region): RowEdge[] {
  return [...ringEdges(region.outline, false), ...region.holes.flatMap((hole) => ringEdges(hole, true))]
}

function ringEdges(ring: Ring, isHole: boolean): RowEdge[] {
  const anticlockwise = signedArea(ring) > 0
  return edgesOf(ring).flatMap(({ from, to }) => {
    const run = to.x - from.x
    if (distance(from, to) < minorEdge) return []
    if (Math.abs(to.y - from.y) > withRows * Math.abs(run)) return []
    const floorAbove = (run > 0 === anticlockwise) !== isHole
    return {
      low: Math.min(from.y, to.y),
      high: Math.max(from.y, to.y),
      length: distance(from, to),
      floorAbove,
    }
  })
}

function thinness(edges: readonly RowEdge[], joint: Mm, width: Mm, least: Mm): number {
  let missing = 0
  for (const edge of edges) {
    const ends = [edge.low, edge.high].map((y) => rowWidthAt(edge.floorAbove ? joint - y : y - joint, width))
    missing += (edge.length * (Math.max(0, least - ends[0]!) + Math.max(0, least - ends[1]!))) / 2
  }
  return missing
}

function rowWidthAt(toJoint: Mm, width: Mm): Mm {
  const rest = ((toJoint % width) + width) % width
  return rest <= onLine || rest >= width - onLine ? width : rest
}
