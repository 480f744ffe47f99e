import type { Mm } from "../../kernels/units.ts"
import type { RoomFacts, Task } from "../trade.ts"
import { tileFor } from "./fields.ts"
import type { TilingInputs } from "./inputs.ts"

/** A doorway where the tiled floor meets another floor. */
export interface Meeting {
  door: string
  room: string
  finish: string
  /** Build-ups over the deck, and how far the other floor stands over the tile (below it: negative), mm. */
  tile: Mm
  other: Mm
  step: Mm
}

/** Thickness of the tiled floor over the deck, mm: as written, else board, bed and tile; undefined without a tile. */
export function tiledBuildUp(task: Task<TilingInputs>): Mm | undefined {
  if (task.input.floorBuildUp !== undefined) return task.input.floorBuildUp
  const tile = tileFor(task, "floorTile")
  return tile ? task.input.board + task.job.rules.value("tile-bed") + tile.thickness : undefined
}

/** Doorways of a tiled floor and what it meets there; rooms that pass no build-up, or lie on another deck, are left out. */
export function meetings(task: Task<TilingInputs>): Meeting[] {
  const tile = tiledBuildUp(task)
  if (!task.input.floor || tile === undefined) return []
  return task.room.doors.flatMap((door): Meeting[] => {
    const room = door.door.between.find((id) => id !== task.room.id)
    const other: RoomFacts | undefined = room ? task.job.passed.get(room) : undefined
    if (!room || other?.floorBuildUp === undefined || !onSameDeck(task, room)) return []
    const finish = other.floorFinish ?? "floor"
    return [
      { door: door.door.id, room, finish, tile, other: other.floorBuildUp, step: other.floorBuildUp - tile },
    ]
  })
}

function onSameDeck(task: Task<TilingInputs>, room: string): boolean {
  const other = task.job.house.rooms.find((each) => each.id === room)
  return !other || other.storey.id === task.room.storey.id
}
