import { intersection } from "polyclip-ts"
import type { Point } from "../../../src/kernels/polygon/point.ts"
import type { Region } from "../../../src/kernels/polygon/region.ts"
import type { Stretch } from "../../../src/trades/floors/layout/boards.ts"
import type { FloorLayout, LaidPiece, RowTask } from "../../../src/trades/floors/rows.ts"

/** Corners are kept to 1/1000 mm; figures that should meet may miss by this, mm and mm2 for each piece. */
const corner = 0.02
const areaOff = 12

/**
 * Everything that is wrong with a layout, in words; nothing when it is right. Works from the pieces alone, with its own geometry
 * (coordinates' area, ray casting, and a general-purpose clipping library for overlaps); shares nothing with the layout's search.
 */
export function faults(task: RowTask, layout: FloorLayout): string[] {
  return [
    ...shapeFaults(task, layout),
    ...boardFaults(layout, task.limits.kerf),
    ...edgeFaults(task, layout),
    ...runFaults(task, layout),
  ]
}

function shapeFaults(task: RowTask, layout: FloorLayout): string[] {
  const wrong: string[] = []
  const pieces = piecesOf(layout)
  const floorArea = task.floor.reduce((sum, region) => sum + areaOf(region), 0)
  const laid = pieces.flatMap((piece) => piece.shape).reduce((sum, shape) => sum + areaOf(shape), 0)
  if (laid > floorArea + areaOff * pieces.length)
    wrong.push(`laid ${laid} is more than the floor's ${floorArea}`)
  const left = floorArea - laid
  const perimeter = task.floor.reduce((sum, region) => sum + around(region), 0)
  if (left > 3 * perimeter) wrong.push(`${left} mm2 of the floor is not covered`)
  if (Math.abs(laid - layout.areas.laid) > 1) wrong.push("laid area is reported wrong")
  for (const piece of pieces) {
    for (const shape of piece.shape) {
      for (const point of shape.outline) {
        if (!task.floor.some((region) => within(region, point)))
          wrong.push(`a corner of ${piece.role} leaves the floor`)
      }
    }
  }
  const boxes = pieces.map((piece) => ({ piece, box: boxOf(piece, task) }))
  boxes.forEach((a, index) => {
    for (const b of boxes.slice(index + 1)) {
      if (!meet(a.box, b.box)) continue
      const shared = overlap(a.piece, b.piece)
      if (shared > areaOff) wrong.push(`two pieces overlap by ${shared} mm2`)
    }
  })
  return wrong
}

/** A rectangle cut of a board. */
interface Cut {
  from: number
  to: number
  low: number
  high: number
}

/** Follows every piece back to its board: no part is used twice, a saw can part them, the sums close. */
function boardFaults(layout: FloorLayout, kerf: number): string[] {
  const wrong: string[] = []
  const { width } = layout.board
  const pieces = piecesOf(layout)
  const marks = [...pieces, ...layout.offcuts]
  let used = 0
  const check = (
    name: string,
    cuts: readonly Stretch[],
    within: Omit<Cut, "low" | "high"> & Partial<Cut>,
  ) => {
    for (const cut of cuts) {
      used += (cut.to - cut.from) * (cut.high - cut.low)
      if (cut.from < within.from || cut.to > within.to) wrong.push(`${name} is cut beyond its ends`)
      if (cut.low < (within.low ?? 0) || cut.high > (within.high ?? width))
        wrong.push(`${name} is cut beyond its edges`)
    }
    if (!cuts.some((cut) => "role" in cut)) wrong.push(`${name} is taken for nothing`)
    if (!canBeSawn(cuts, kerf)) wrong.push(`${name} is used twice, or no saw can part it`)
  }
  if (layout.lengths.length !== layout.boards) wrong.push("boards without a length")
  layout.lengths.forEach((length, index) => {
    const cuts = marks.filter((piece) => piece.room === null && piece.board === index + 1)
    check(`board ${index + 1}`, cuts, { from: 0, to: length })
    if (cuts.some((cut) => cut.of !== length)) wrong.push(`board ${index + 1} has two lengths`)
  })
  for (const offcut of layout.brought) {
    const cuts = marks.filter((piece) => piece.room === offcut.room && piece.board === offcut.board)
    check(offcut.mark, cuts, offcut)
    if (cuts.some((cut) => cut.of !== offcut.of)) wrong.push(`${offcut.mark} has two lengths`)
  }
  const isKnown = ({ room, board }: Stretch) =>
    room === null
      ? board >= 1 && board <= layout.boards
      : layout.brought.some((offcut) => offcut.room === room && offcut.board === board)
  if (!marks.every(isKnown)) wrong.push("a piece of no board")
  const bought = layout.lengths.reduce((sum, length) => sum + length * width, 0)
  const brought = layout.brought.reduce((sum, cut) => sum + (cut.to - cut.from) * (cut.high - cut.low), 0)
  const { areas } = layout
  if (Math.abs(areas.laid + areas.offcuts + areas.lost - bought - brought) > 1)
    wrong.push("laid, offcuts and lost do not sum to bought and brought")
  if (areas.lost < -1) wrong.push("less than nothing is lost")
  const cutAway = pieces.reduce((sum, piece) => {
    return (
      sum +
      (piece.to - piece.from) * (piece.high - piece.low) -
      piece.shape.reduce((own, shape) => own + areaOf(shape), 0)
    )
  }, 0)
  if (Math.abs(bought + brought - used - (areas.lost - cutAway)) > 1)
    wrong.push("what is lost does not follow from the boards")
  return [...wrong, ...packFaults(layout)]
}

/** Boards are of the lengths that packs hold, in no more of each than the packs opened hold; fewer than the bound is too good. */
function packFaults({ board, boards, lengths, packs, bound }: FloorLayout): string[] {
  if (!board.mix) {
    const odd = lengths.some((length) => length !== board.length) ? ["a board of another length"] : []
    return bound > boards ? [...odd, "fewer boards than the bound"] : odd
  }
  const wrong: string[] = []
  if (packs === null || bound > packs) wrong.push("fewer packs than the bound")
  for (const { length, perPack } of board.mix) {
    const count = lengths.filter((each) => each === length).length
    if (count > (packs ?? 0) * perPack) wrong.push(`more boards of ${length} than the packs hold`)
  }
  if (lengths.some((length) => !board.mix!.some((each) => each.length === length)))
    wrong.push("a board of a length that no pack holds")
  return wrong
}

/**
 * Everything that is wrong with what rooms lend one another, in words: an offcut that no earlier room left, one used twice, a board that
 * cannot give the pieces of all rooms together, sums that do not close over the job.
 */
export function faultsAcross(rooms: readonly { id: string; layout: FloorLayout }[], kerf: number): string[] {
  const wrong: string[] = []
  const lent = new Set<string>()
  rooms.forEach(({ id, layout }, index) => {
    for (const offcut of layout.brought) {
      const key = JSON.stringify([offcut.room, offcut.board, offcut.from, offcut.to, offcut.low, offcut.high])
      if (lent.has(key)) wrong.push(`${id}: ${offcut.mark} is used by two rooms`)
      lent.add(key)
      const isLeft = rooms
        .slice(0, index)
        .some((earlier) =>
          earlier.layout.offcuts.some(
            (left) =>
              (left.room ?? earlier.id) === offcut.room &&
              left.board === offcut.board &&
              left.from === offcut.from &&
              left.to === offcut.to &&
              offcut.mark === `${earlier.id} ${left.mark}`,
          ),
        )
      if (!isLeft) wrong.push(`${id}: no earlier room left ${offcut.mark}`)
    }
  })
  for (const { id, layout } of rooms) {
    for (let board = 1; board <= layout.boards; board++) {
      const cuts = rooms.flatMap((room) =>
        piecesOf(room.layout).filter((piece) => (piece.room ?? room.id) === id && piece.board === board),
      )
      if (!canBeSawn(cuts, kerf)) wrong.push(`board ${board} of ${id} cannot give the pieces of all rooms`)
    }
  }
  const sum = (of: (layout: FloorLayout) => number) =>
    rooms.reduce((total, room) => total + of(room.layout), 0)
  const over = sum(({ areas }) => areas.bought + areas.brought - areas.laid - areas.offcuts - areas.lost)
  if (Math.abs(over) > 1) wrong.push("the sums of the job do not close")
  return wrong
}

/** Pieces nearer to a break's line than the gap there. */
export function breakFaults(
  layout: FloorLayout,
  breaks: readonly { from: Point; to: Point }[],
  gap: number,
): string[] {
  return piecesOf(layout).flatMap((piece) =>
    breaks.flatMap(({ from, to }) => {
      const length = Math.hypot(to.x - from.x, to.y - from.y)
      const away = (point: Point) =>
        ((point.x - from.x) * (to.y - from.y) - (point.y - from.y) * (to.x - from.x)) / length
      const beside = (point: Point) =>
        ((point.x - from.x) * (to.x - from.x) + (point.y - from.y) * (to.y - from.y)) / length
      return piece.shape.flatMap(({ outline }) => {
        const near = outline.filter((point) => beside(point) > 0 && beside(point) < length)
        if (near.length === 0) return []
        const sides = near.map(away)
        const clear = Math.min(...sides) > gap - corner || Math.max(...sides) < corner - gap
        return clear ? [] : [`a ${piece.role} crosses a break or comes too near`]
      })
    }),
  )
}

/** True if straight cuts from side to side, a saw's width each, part all pieces of a board. */
function canBeSawn(cuts: readonly Cut[], kerf: number): boolean {
  if (cuts.length < 2) return true
  const ways = [
    { start: (cut: Cut) => cut.from, end: (cut: Cut) => cut.to },
    { start: (cut: Cut) => cut.low, end: (cut: Cut) => cut.high },
  ]
  return ways.some(({ start, end }) =>
    cuts.some((first) => {
      const before = cuts.filter((cut) => end(cut) <= end(first))
      const after = cuts.filter((cut) => start(cut) >= end(first) + kerf - corner)
      const parts = before.length + after.length === cuts.length && after.length > 0
      return parts && canBeSawn(before, kerf) && canBeSawn(after, kerf)
    }),
  )
}

/** The long edges of every piece: where it meets a neighbour in the next row, it must still have the groove or the tongue there. */
function edgeFaults(task: RowTask, layout: FloorLayout): string[] {
  const wrong: string[] = []
  const { width } = layout.board
  for (const row of layout.rows) {
    for (const run of row.runs) {
      for (const piece of run.pieces) {
        const [, bottom, , top] = acrossOf(piece, task)
        const low = bottom - row.bottom
        const high = top - row.bottom
        const wide = piece.high - piece.low
        if (high - low > wide + 1) wrong.push(`row ${run.name}: a piece wider than its strip`)
        if (low < edgeAt && piece.low !== 0) wrong.push(`row ${run.name}: the groove is cut away`)
        if (high > width - edgeAt && piece.high !== width)
          wrong.push(`row ${run.name}: the tongue is cut away`)
        if (low < edgeAt && high > wide + 1) wrong.push(`row ${run.name}: the strip does not reach across`)
        if (high > width - edgeAt && low < width - wide - 1)
          wrong.push(`row ${run.name}: the strip does not reach across`)
      }
    }
  }
  return wrong
}

/** A piece that comes this near to its row's edge meets the next row, mm. */
const edgeAt = 0.4

/** The box of a piece along and away from the first row's wall, measured from that wall. */
function acrossOf(piece: LaidPiece, task: RowTask): [number, number, number, number] {
  const { start, end } = task.from
  const length = Math.hypot(end.x - start.x, end.y - start.y)
  const points = piece.shape.flatMap((shape) => shape.outline)
  const along = points.map(
    ({ x, y }) => ((x - start.x) * (end.x - start.x) + (y - start.y) * (end.y - start.y)) / length,
  )
  const away = points.map(
    ({ x, y }) => ((x - start.x) * (end.y - start.y) - (y - start.y) * (end.x - start.x)) / length,
  )
  return [Math.min(...along), Math.min(...away), Math.max(...along), Math.max(...away)]
}

function runFaults(task: RowTask, layout: FloorLayout): string[] {
  const wrong: string[] = []
  const { stagger, leastEnd } = task.limits
  let before: number[] = []
  layout.rows.forEach((row, rowIndex) => {
    if (row.number !== rowIndex + 1) wrong.push("rows are not numbered in order")
    const joints: number[] = []
    for (const run of row.runs) {
      run.pieces.forEach((piece, index) => {
        const next = run.pieces[index + 1]
        if (piece.to - piece.from < piece.right - piece.left - corner) wrong.push("a piece is cut too short")
        if (!next) return
        joints.push(next.left)
        if (Math.abs(next.left - piece.right) > corner) wrong.push(`row ${run.name} has a gap or a lap`)
        if (piece.to !== piece.of) wrong.push(`row ${run.name}: a joint without the right factory end`)
        if (next.from !== 0) wrong.push(`row ${run.name}: a joint without the left factory end`)
      })
      const ends = run.pieces.length > 1 ? [run.pieces[0]!, run.pieces.at(-1)!] : []
      for (const end of ends)
        if (end.right - end.left < leastEnd - corner) wrong.push(`row ${run.name} has a short end`)
    }
    for (const joint of joints) {
      for (const other of before)
        if (Math.abs(joint - other) < stagger - corner) wrong.push(`row ${row.number}: short stagger`)
    }
    before = joints
  })
  return wrong
}

function piecesOf(layout: FloorLayout): LaidPiece[] {
  return layout.rows.flatMap((row) => row.runs.flatMap((run) => run.pieces))
}

function areaOf(region: Region): number {
  const ring = (points: readonly Point[]) =>
    Math.abs(
      points.reduce((sum, point, index) => {
        const next = points[(index + 1) % points.length]!
        return sum + point.x * next.y - next.x * point.y
      }, 0) / 2,
    )
  return ring(region.outline) - region.holes.reduce((sum, hole) => sum + ring(hole), 0)
}

function around(region: Region): number {
  return [region.outline, ...region.holes].reduce((sum, ring) => {
    return (
      sum +
      ring.reduce((length, point, index) => {
        const next = ring[(index + 1) % ring.length]!
        return length + Math.hypot(next.x - point.x, next.y - point.y)
      }, 0)
    )
  }, 0)
}

function within(region: Region, point: Point): boolean {
  if (!inRing(region.outline, point) && awayFrom(region.outline, point) > corner) return false
  return region.holes.every((hole) => !inRing(hole, point) || awayFrom(hole, point) <= corner)
}

function inRing(ring: readonly Point[], { x, y }: Point): boolean {
  let inside = false
  ring.forEach((from, index) => {
    const to = ring[(index + 1) % ring.length]!
    if (from.y > y !== to.y > y && x < ((to.x - from.x) * (y - from.y)) / (to.y - from.y) + from.x)
      inside = !inside
  })
  return inside
}

function awayFrom(ring: readonly Point[], point: Point): number {
  return Math.min(
    ...ring.map((from, index) => {
      const to = ring[(index + 1) % ring.length]!
      const squared = (to.x - from.x) ** 2 + (to.y - from.y) ** 2
      const along = ((point.x - from.x) * (to.x - from.x) + (point.y - from.y) * (to.y - from.y)) / squared
      const share = Math.max(0, Math.min(1, along))
      return Math.hypot(
        from.x + (to.x - from.x) * share - point.x,
        from.y + (to.y - from.y) * share - point.y,
      )
    }),
  )
}

/** The box of a piece with its sides along the first row's wall and away from it. */
function boxOf(piece: LaidPiece, { from: { start, end } }: RowTask): [number, number, number, number] {
  const points = piece.shape.flatMap((shape) => shape.outline)
  const angle = Math.atan2(end.y - start.y, end.x - start.x)
  const xs = points.map(({ x, y }) => x * Math.cos(angle) + y * Math.sin(angle))
  const ys = points.map(({ x, y }) => y * Math.cos(angle) - x * Math.sin(angle))
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]
}

function meet(a: [number, number, number, number], b: [number, number, number, number]): boolean {
  return (
    Math.min(a[2], b[2]) - Math.max(a[0], b[0]) > corner &&
    Math.min(a[3], b[3]) - Math.max(a[1], b[1]) > corner
  )
}

function overlap(a: LaidPiece, b: LaidPiece): number {
  const polygons = (piece: LaidPiece) =>
    piece.shape.map((shape) =>
      [shape.outline, ...shape.holes].map((ring) =>
        ring.map((point): [number, number] => [point.x, point.y]),
      ),
    )
  const shared = intersection(polygons(a), polygons(b))
  return shared.reduce((sum, polygon) => {
    const [outline = [], ...holes] = polygon.map((ring) => ring.map(([x, y]) => ({ x, y })))
    return sum + areaOf({ outline, holes })
  }, 0)
}
