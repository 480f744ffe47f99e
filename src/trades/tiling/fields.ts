import type { ProductOf } from "../../intake/schema/products.ts"
import { boundsOf } from "../../kernels/polygon/measure.ts"
import { type Mm, type SquareMetres, squareMetres } from "../../kernels/units.ts"
import type { Wall } from "../../survey/room.ts"
import { finishedFloor } from "../finished-floor.ts"
import type { Task } from "../trade.ts"
import type { TiledWall, TilingInputs } from "./inputs.ts"
import { centred, fromEnd, type SetOut } from "./set-out.ts"

/** A rectangle of tiles on one wall, or the floor. */
export interface TileField {
  /** `Wall 2`, `Floor`. */
  name: string
  on: "wall" | "floor"
  wall?: number
  tile: ProductOf<"tile">
  width: Mm
  height: Mm
  /** Lower left corner on the wall: from its left end, over the finished floor. */
  left: Mm
  foot: Mm
  /** m2 after openings. */
  area: SquareMetres
  across: SetOut
  up: SetOut
  /** Tiles needed before waste: whole ones and one for each cut. */
  tiles: number
  /** Length of open joint to be sealed, m. */
  sealed: number
}

type TilingTask = Task<TilingInputs>

/** Tiled fields of a room: walls as written, then the floor. A field without a tile product is left out (a finding says so). */
export function tileFields(task: TilingTask): TileField[] {
  const wallTile = tileFor(task, "wallTile")
  const floorTile = tileFor(task, "floorTile")
  const walls = task.input.walls.flatMap((each) => {
    const wall = task.room.walls.find((other) => other.number === each.wall)
    const isThere = wall && wallTile && rightOf(each, wall) > each.from && each.top > each.foot
    return isThere ? [wallField(task, each, wall, wallTile)] : []
  })
  return task.input.floor && floorTile ? [...walls, floorField(task, floorTile)] : walls
}

/** The tile chosen for walls or floor: the room's, else the job's. */
export function tileFor(task: TilingTask, use: "wallTile" | "floorTile"): ProductOf<"tile"> | undefined {
  return task.job.product(task.input.products[use] ?? task.job.chosen(use), "tile")
}

/** Area of a tiled part of a wall, m2: its rectangle less every opening's part in it. */
export function tiledArea(task: TilingTask, each: TiledWall, wall: Wall): SquareMetres {
  const right = rightOf(each, wall)
  const whole = Math.max(0, right - each.from) * Math.max(0, each.top - each.foot)
  const off = openingParts(task, each, wall).reduce((sum, part) => sum + part.width * part.height, 0)
  return squareMetres(whole - off)
}

/** What of the wall's openings lies within a tiled part: width and height, mm. */
function openingParts(task: TilingTask, each: TiledWall, wall: Wall): { width: Mm; height: Mm }[] {
  const floor = finishedFloor(task)
  const bottom = each.foot + floor
  const top = each.top + floor
  const openings = [
    ...wall.doors.map((door) => ({ ...door, sill: 0 })),
    ...wall.windows.map(({ fromLeft, width, height, sill }) => ({ fromLeft, width, height, sill })),
  ]
  return openings
    .map(({ fromLeft, width, height, sill }) => ({
      width: Math.min(rightOf(each, wall), fromLeft + width) - Math.max(each.from, fromLeft),
      height: Math.min(top, sill + height) - Math.max(bottom, sill),
    }))
    .filter((part) => part.width > 0 && part.height > 0)
}

function rightOf(each: TiledWall, wall: Wall): Mm {
  return Math.min(each.to ?? wall.length, wall.length)
}

function wallField(task: TilingTask, each: TiledWall, wall: Wall, tile: ProductOf<"tile">): TileField {
  const joint = jointOf(task)
  const edge = task.job.rules.value("tile-edge-joint")
  const width = rightOf(each, wall) - each.from
  const height = each.top - each.foot
  const across = centred({ width: clear(width, edge, 2), tile: tile.width, joint })
  const rows = { width: clear(height, edge, 1), tile: tile.height, joint }
  const up =
    each.rows === "centred" ? centred(rows) : fromEnd(rows, each.rows === "full-at-foot" ? "first" : "last")
  const area = tiledArea(task, each, wall)
  return {
    name: `Wall ${wall.number}`,
    on: "wall",
    wall: wall.number,
    tile,
    width,
    height,
    left: each.from,
    foot: each.foot,
    area,
    across,
    up,
    tiles: across.count * up.count - wholeInOpenings(task, each, wall, tile),
    sealed: (width + 2 * height) / 1000,
  }
}

/** Tiles that are surely not needed: wherever the grid lies, one less than fit side by side stand whole in an opening. */
function wholeInOpenings(task: TilingTask, each: TiledWall, wall: Wall, tile: ProductOf<"tile">): number {
  const joint = jointOf(task)
  return openingParts(task, each, wall).reduce((sum, part) => {
    const across = Math.floor((part.width + joint) / (tile.width + joint)) - 1
    const up = Math.floor((part.height + joint) / (tile.height + joint)) - 1
    return sum + Math.max(0, across) * Math.max(0, up)
  }, 0)
}

/** The floor is set out over the room's length and breadth; its area is the true one. */
function floorField(task: TilingTask, tile: ProductOf<"tile">): TileField {
  const joint = jointOf(task)
  const edge = task.job.rules.value("tile-edge-joint")
  const box = boundsOf(task.room.outline)
  const width = box.right - box.left
  const height = box.top - box.bottom
  const across = centred({ width: clear(width, edge, 2), tile: tile.width, joint })
  const up = centred({ width: clear(height, edge, 2), tile: tile.height, joint })
  return {
    name: "Floor",
    on: "floor",
    tile,
    width,
    height,
    left: 0,
    foot: 0,
    area: task.room.floorArea,
    across,
    up,
    tiles: across.count * up.count,
    sealed: task.room.perimeter / 1000,
  }
}

/** Joint between tiles, mm: as written, else by rule. */
export function jointOf(task: TilingTask): Mm {
  return task.input.joint ?? task.job.rules.value("tile-joint")
}

function clear(length: Mm, edge: Mm, ends: number): Mm {
  return length - ends * edge
}
