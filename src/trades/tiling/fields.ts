import type { ProductOf } from "../../intake/schema/products.ts"
import { difference, inset, intersection } from "../../kernels/polygon/clip.ts"
import { boundsOf, regionArea } from "../../kernels/polygon/measure.ts"
import { type Region, regionOf } from "../../kernels/polygon/region.ts"
import { type Mm, type SquareMetres, squareMetres } from "../../kernels/units.ts"
import type { Wall } from "../../survey/room.ts"
import { finishedFloor } from "../finished-floor.ts"
import type { Task } from "../trade.ts"
import type { TiledWall, TilingInputs } from "./inputs.ts"
import { centred, fromEnd, type SetOut, spansOf } from "./set-out.ts"

/** A rectangle of tiles on one wall, or the floor. */
export interface TileField {
  /** `Wall 2`, `Floor`. */
  name: string
  on: "wall" | "floor"
  wall?: number
  tile: ProductOf<"tile">
  width: Mm
  height: Mm
  /** m2 after openings. */
  area: SquareMetres
  across: SetOut
  up: SetOut
  /** Tiles needed before waste, whole ones and one for each cut, each as it is cut: mm on the wall (from its left end, over the finished floor) or on the plan. */
  pieces: Region[][]
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

/** Area of a tiled part of a wall, m2: what of its rectangle lies on the wall, under slopes too, less every opening's part in it. */
export function tiledArea(task: TilingTask, each: TiledWall, wall: Wall): SquareMetres {
  return areaOf(wallRegion(task, each, wall))
}

/** What is tiled of a wall: mm from its left end and over the finished floor. */
function wallRegion(task: TilingTask, each: TiledWall, wall: Wall): Region[] {
  const floor = finishedFloor(task)
  const faces = wall.elevation.map(({ x, y }) => ({ x, y: y - floor }))
  const asked = rectangle({ left: each.from, foot: each.foot, right: rightOf(each, wall), top: each.top })
  const openings = [
    ...wall.doors.map((door) => ({ ...door, sill: 0 })),
    ...wall.windows.map(({ fromLeft, width, height, sill }) => ({ fromLeft, width, height, sill })),
  ].map(({ fromLeft, width, height, sill }) =>
    rectangle({ left: fromLeft, foot: sill - floor, right: fromLeft + width, top: sill - floor + height }),
  )
  const on = intersection([regionOf(faces)], [asked])
  return openings.length > 0 ? difference(on, openings) : on
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
  const region = wallRegion(task, each, wall)
  const grid = { tile, joint, across, up, left: each.from + edge, foot: each.foot + edge }
  return {
    name: `Wall ${wall.number}`,
    on: "wall",
    wall: wall.number,
    tile,
    width,
    height,
    area: areaOf(region),
    across,
    up,
    pieces: piecesOf(grid, region),
    sealed: (width + 2 * height) / 1000,
  }
}

/** The floor is set out over the room's length and breadth; tiles that lie beyond its true outline are not counted. */
function floorField(task: TilingTask, tile: ProductOf<"tile">): TileField {
  const joint = jointOf(task)
  const edge = task.job.rules.value("tile-edge-joint")
  const { outline, holes, perimeter } = task.room
  const box = boundsOf(outline)
  const width = box.right - box.left
  const height = box.top - box.bottom
  const across = centred({ width: clear(width, edge, 2), tile: tile.width, joint })
  const up = centred({ width: clear(height, edge, 2), tile: tile.height, joint })
  const open = holes.filter((hole) => !hole.floored).map((hole) => regionOf(hole.outline))
  const within = inset(regionOf(outline), edge)
  const grid = { tile, joint, across, up, left: box.left + edge, foot: box.bottom + edge }
  return {
    name: "Floor",
    on: "floor",
    tile,
    width,
    height,
    area: task.room.floorArea,
    across,
    up,
    pieces: piecesOf(grid, open.length > 0 ? difference(within, open) : within),
    sealed: perimeter / 1000,
  }
}

interface Grid {
  tile: ProductOf<"tile">
  joint: Mm
  across: SetOut
  up: SetOut
  /** Lower left corner of the first tile. */
  left: Mm
  foot: Mm
}

/** A piece with less than this is none: what is left of a tile where an edge only touches it, mm2. */
const leastPiece = 100

/** Every tile of a grid of which something lies in a region, as it is cut. */
function piecesOf({ tile, joint, across, up, left, foot }: Grid, region: Region[]): Region[][] {
  const columns = spansOf(across, { tile: tile.width, joint })
  const rows = spansOf(up, { tile: tile.height, joint })
  return rows
    .flatMap((row) =>
      columns.map((column) =>
        rectangle({
          left: left + column.from,
          foot: foot + row.from,
          right: left + column.to,
          top: foot + row.to,
        }),
      ),
    )
    .map((whole) => intersection(region, [whole]))
    .filter((cut) => cut.reduce((sum, part) => sum + regionArea(part), 0) >= leastPiece)
}

function rectangle({ left, foot, right, top }: Record<"left" | "foot" | "right" | "top", Mm>): Region {
  return regionOf([
    { x: left, y: foot },
    { x: right, y: foot },
    { x: right, y: top },
    { x: left, y: top },
  ])
}

function areaOf(region: readonly Region[]): SquareMetres {
  return squareMetres(region.reduce((sum, part) => sum + regionArea(part), 0))
}

/** Joint between tiles, mm: as written, else by rule. */
export function jointOf(task: TilingTask): Mm {
  return task.input.joint ?? task.job.rules.value("tile-joint")
}

function clear(length: Mm, edge: Mm, ends: number): Mm {
  return length - ends * edge
}
