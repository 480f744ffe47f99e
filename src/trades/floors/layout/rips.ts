import { anticlockwise } from "../../../kernels/polygon/angles.ts"
import { difference } from "../../../kernels/polygon/clip.ts"
import { boundsOf } from "../../../kernels/polygon/measure.ts"
import type { Point } from "../../../kernels/polygon/point.ts"
import { edgesOf, type Region, regionOf } from "../../../kernels/polygon/region.ts"
import type { Mm } from "../../../kernels/units.ts"

/** A straight line across the frame: its height at a place along the rows is `at + slope × x`, mm. */
interface Line {
  at: Mm
  slope: number
}

/** The two straight lengthwise edges of a run or piece once ripped, before notches are cut. */
export interface Rip {
  near: Line
  far: Line
}

/** A flat edge of a figure, left to right. */
interface FlatEdge {
  left: Mm
  right: Mm
  line: Line
}

/** An edge runs lengthwise if it rises less than this for each mm along; steeper is an end. */
export const lengthwise = 0.7
/** What juts out over less of a piece's length is fitted, not ripped, mm. */
const fitting: Mm = 3
/** Lines that part by less over their length are one, mm. */
const oneLine: Mm = 0.5
/** A line that leaves the board by more than this within the run is no rip for it, mm. */
const outOfBoard: Mm = 1

/** Height of a line of the frame at a place along the rows, mm. */
export function heightAt(line: Line, x: Mm): Mm {
  return line.at + line.slope * x
}

/**
 * The rip of a run: on each side the straight line on which most of its edge lies. What lies off that line is notched, or juts out.
 * @param level edges of the uncut row in the frame
 */
export function ripOf(run: Region, level: { bottom: Mm; top: Mm }): Rip {
  const { near, far } = flatEdges(run)
  const box = boundsOf(run.outline)
  const fits = (line: Line) =>
    [box.left, box.right].every((x) => {
      const y = heightAt(line, x)
      return y > level.bottom - outOfBoard && y < level.top + outOfBoard
    })
  return {
    near: mainLine(
      near.filter((edge) => fits(edge.line)),
      -1,
    ) ?? { at: level.bottom, slope: 0 },
    far: mainLine(
      far.filter((edge) => fits(edge.line)),
      1,
    ) ?? { at: level.top, slope: 0 },
  }
}

/**
 * A run's rip shifted out as far as one piece of it juts beyond; where that leaves the board, the board's own edge. What juts out no
 * wider than a saw cut at the piece's end (a doorway that begins at a joint) is left to fitting.
 */
export function ripOfPiece(rip: Rip, parts: readonly Region[], level: { bottom: Mm; top: Mm }): Rip {
  const { left, right } = boundsOf(parts.flatMap((part) => part.outline))
  const corners = jutting(rip, parts, { left, right })
  const below = Math.max(0, ...corners.map(({ x, y }) => heightAt(rip.near, x) - y))
  const above = Math.max(0, ...corners.map(({ x, y }) => y - heightAt(rip.far, x)))
  const near = { ...rip.near, at: rip.near.at - below }
  const far = { ...rip.far, at: rip.far.at + above }
  const least = Math.min(heightAt(near, left), heightAt(near, right))
  const most = Math.max(heightAt(far, left), heightAt(far, right))
  return {
    near: least < level.bottom ? { at: level.bottom, slope: 0 } : near,
    far: most > level.top ? { at: level.top, slope: 0 } : far,
  }
}

/** Corners of what lies beyond the lines of a rip. */
function jutting(rip: Rip, parts: readonly Region[], { left, right }: { left: Mm; right: Mm }): Point[] {
  const beyond = ({ x, y }: Point) => Math.max(heightAt(rip.near, x) - y, y - heightAt(rip.far, x))
  if (parts.every((part) => part.outline.every((point) => beyond(point) < oneLine))) return []
  const band = regionOf([
    { x: left - 1, y: heightAt(rip.near, left - 1) },
    { x: right + 1, y: heightAt(rip.near, right + 1) },
    { x: right + 1, y: heightAt(rip.far, right + 1) },
    { x: left - 1, y: heightAt(rip.far, left - 1) },
  ])
  return difference(parts, [band])
    .map((jut) => jut.outline)
    .filter((outline) => {
      const box = boundsOf(outline)
      return box.right - box.left >= fitting
    })
    .flat()
}

/** Width between the lines of a rip at a place along the rows, mm. */
export function ripWidth(rip: Rip, x: Mm): Mm {
  return Math.max(0, heightAt(rip.far, x) - heightAt(rip.near, x))
}

function flatEdges(run: Region): { near: FlatEdge[]; far: FlatEdge[] } {
  const near: FlatEdge[] = []
  const far: FlatEdge[] = []
  for (const { from, to } of edgesOf(anticlockwise(run.outline))) {
    const along = to.x - from.x
    if (along === 0 || Math.abs(to.y - from.y) >= lengthwise * Math.abs(along)) continue
    const slope = (to.y - from.y) / along
    const edge = {
      left: Math.min(from.x, to.x),
      right: Math.max(from.x, to.x),
      line: { at: from.y - slope * from.x, slope },
    }
    if (along > 0) near.push(edge)
    else far.push(edge)
  }
  return { near, far }
}

/** The line that most length lies on; of equals the outer. */
function mainLine(edges: readonly FlatEdge[], outward: 1 | -1): Line | undefined {
  let best: { edge: FlatEdge; length: Mm } | undefined
  for (const edge of edges) {
    const length = edges
      .filter((other) => [other.left, other.right].every((x) => apart(edge.line, other.line, x) < oneLine))
      .reduce((sum, other) => sum + other.right - other.left, 0)
    const middle = (edge.left + edge.right) / 2
    const isOuter = best && outward * (heightAt(edge.line, middle) - heightAt(best.edge.line, middle)) > 0
    if (!best || length > best.length + oneLine || (length > best.length - oneLine && isOuter))
      best = { edge, length }
  }
  return best?.edge.line
}

function apart(a: Line, b: Line, x: Mm): Mm {
  return Math.abs(heightAt(a, x) - heightAt(b, x))
}
