import { inset } from "../../../src/kernels/polygon/clip.ts"
import type { Point } from "../../../src/kernels/polygon/point.ts"
import type { Region } from "../../../src/kernels/polygon/region.ts"
import type { RowTask } from "../../../src/trades/floors/rows.ts"

/** A repeatable source of figures from 0 to 1 (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

/** Least and most of a generated room, mm. */
export interface RoomSize {
  wide: [number, number]
  deep: [number, number]
}

/** From a closet to a large room, to break the layout. */
const anyRoom: RoomSize = { wide: [1500, 4600], deep: [1300, 3900] }
/** Bedrooms and living rooms as they are built, to count boards on. */
export const livedInRoom: RoomSize = { wide: [2700, 5200], deep: [2400, 4500] }

/** A room walked clockwise, x right and y up, wall 1 along the top: out of square, with breast, nook, splay or column at random. */
export function generatedRoom(
  seed: number,
  size: RoomSize = anyRoom,
): { outline: Point[]; holes: Point[][] } {
  const random = seeded(seed)
  const whole = (least: number, most: number) => Math.round(least + random() * (most - least))
  const wide = whole(...size.wide)
  const deep = whole(...size.deep)
  const skew = () => whole(-18, 18)
  const outline: Point[] = [
    { x: 0, y: 0 },
    { x: wide, y: skew() },
  ]
  const bottomRight = { x: wide + skew(), y: -deep + skew() }
  const bottomLeft = { x: skew(), y: -deep + skew() }
  const kind = random()
  if (kind < 0.3) outline.push(...rightBreast(wide, deep, whole))
  else if (kind < 0.45) outline.push({ x: wide - 600, y: bottomRight.y }, bottomLeft)
  if (kind >= 0.3 && kind < 0.45) return { outline: splayed(outline, wide, deep), holes: [] }
  outline.push(bottomRight)
  if (kind >= 0.45 && kind < 0.65) {
    const middle = wide / 2
    const out = whole(100, 350)
    const half = whole(250, Math.round(wide / 4))
    outline.push(
      { x: middle + half, y: -deep },
      { x: middle + half, y: -deep + out },
      { x: middle - half, y: -deep + out },
      { x: middle - half, y: -deep },
    )
  }
  outline.push(bottomLeft)
  const holes: Point[][] = []
  if (kind >= 0.65 && kind < 0.8) {
    const x = whole(450, wide - 850)
    const y = -whole(450, deep - 850)
    const size = whole(150, 400)
    holes.push([
      { x, y },
      { x: x + size, y },
      { x: x + size, y: y - size },
      { x, y: y - size },
    ])
  }
  return { outline, holes }
}

function rightBreast(wide: number, deep: number, whole: (least: number, most: number) => number): Point[] {
  const out = whole(200, 400)
  const from = Math.round(deep * 0.3)
  const to = Math.round(deep * 0.65)
  return [
    { x: wide, y: -from },
    { x: wide - out, y: -from },
    { x: wide - out, y: -to },
    { x: wide, y: -to },
  ]
}

function splayed(outline: Point[], wide: number, deep: number): Point[] {
  const [first, second] = outline as [Point, Point]
  return [first, second, { x: wide, y: -deep + 500 }, { x: wide - 500, y: -deep }, { x: 0, y: -deep }]
}

/** The generated room as one figure. */
export function regionOfRoom(room: { outline: Point[]; holes: Point[][] }): Region {
  return { outline: room.outline, holes: room.holes }
}

/** Limits and the usual board of generated floors, mm. */
export const generatedLimits = { kerf: 3, leastEnd: 300, stagger: 300, leastRow: 60 }
export const generatedBoard = { width: 189, length: 1860 }

/** A generated room with rows along its top or its left wall, and boards of the usual size or any other. */
export function generatedFloor(seed: number): RowTask {
  const room = generatedRoom(seed)
  const random = seeded(seed + 100_000)
  const floor = inset(regionOfRoom(room), 10)
  const longWay = random() < 0.5
  const [start, end] = longWay
    ? [room.outline[0]!, room.outline[1]!]
    : [room.outline.at(-1)!, room.outline[0]!]
  const board =
    random() < 0.6
      ? generatedBoard
      : { width: 150 + Math.round(random() * 80), length: 1200 + Math.round(random() * 1000) }
  return { floor, from: { start, end }, board, limits: generatedLimits }
}

/** A lived-in room with rows along its top wall and the usual board. */
export function livedInFloor(seed: number): RowTask {
  const room = generatedRoom(seed * 31, livedInRoom)
  const [start, end] = [room.outline[0]!, room.outline[1]!]
  const floor = inset(regionOfRoom(room), 10)
  return { floor, from: { start, end }, board: generatedBoard, limits: generatedLimits }
}

/** Three lengths to a pack of eight, as makers mix them. */
export const generatedMix = [
  { length: 2200, perPack: 4 },
  { length: 1820, perPack: 2 },
  { length: 1300, perPack: 2 },
]

/** A generated floor laid of packs of several lengths. */
export function mixedFloor(seed: number): RowTask {
  return { ...generatedFloor(seed), board: { width: 189, length: 2200, mix: generatedMix } }
}
