import { z } from "zod"
import { type Draft, listAt, textAt } from "../draft.ts"
import {
  doorInNoWall,
  entryNotInWall1,
  noSuchEntry,
  type Opening,
  openingBeyondWall,
  openingsOverlap,
  openingWiderThanWall,
} from "../messages.ts"
import { nearest } from "../nearest.ts"
import { type DoorEntry, door } from "../schema/house.ts"
import { doorHere, run, windowHere } from "../schema/room.ts"
import { valueAt } from "../schema-findings.ts"
import { findingIn, type LocatedFinding, type YamlFile } from "../yaml-file.ts"
import { soundEntries, soundPart } from "./sound.ts"

/**
 * Doorways and windows that cannot stand where a room places them: wider than their wall, past its end, one in another, a door
 * in what is no wall; and an entry that wall 1 does not hold. Only what has no finding of its own is held against its wall.
 */
export function openings(draft: Draft, earlier: readonly LocatedFinding[]): LocatedFinding[] {
  const doors = new Map(
    soundEntries(draft.files.house, ["doors"], door, earlier).map(({ entry }) => [entry.id, entry]),
  )
  return draft.files.rooms.flatMap((room) => [
    ...misplaced(room, doors, earlier),
    ...entryElsewhere(room, stairsOf(draft.files.house, textAt(room.value, "id"))),
  ])
}

type Run = z.infer<typeof run>

/** An opening as placed in a room's file, with its height range where it is known. */
interface Placed extends Opening {
  path: (string | number)[]
  bottom: number
  top: number
  /** Roof windows stand in the slope, others in the wall itself. */
  inSlope: boolean
}

function misplaced(
  room: YamlFile,
  doors: ReadonlyMap<string, DoorEntry>,
  earlier: readonly LocatedFinding[],
): LocatedFinding[] {
  const outline = soundPart(room, ["outline"], z.array(run), earlier) ?? []
  const placedDoors = soundEntries(room, ["doors"], doorHere, earlier).flatMap(({ entry, path }) => {
    const here = doors.get(entry.door)
    return here ? [placedDoor(here, entry, path)] : []
  })
  const windows = soundEntries(room, ["windows"], windowHere, earlier)
  const placed = [...placedDoors, ...windows.map(({ entry, path }) => placedWindow(entry, path))]
  return [
    ...placed.flatMap((opening) => offItsWall(room, opening, outline)),
    ...overlapping(room, placed),
    ...placedDoors.flatMap((opening) => inNoWall(room, opening, outline, doors)),
  ]
}

function placedDoor(of: DoorEntry, here: z.infer<typeof doorHere>, path: (string | number)[]): Placed {
  return {
    ...here,
    sort: "door",
    name: `the doorway ${of.id}`,
    width: Math.max(...of.widths),
    path,
    bottom: 0,
    top: Math.max(...of.heights),
    inSlope: false,
  }
}

function placedWindow(of: z.infer<typeof windowHere>, path: (string | number)[]): Placed {
  return {
    ...of,
    sort: "window",
    name: `the ${of.kind} ${of.id}`,
    path,
    bottom: of.sill,
    top: of.sill + of.height,
    inSlope: of.kind === "roof-window",
  }
}

function offItsWall(room: YamlFile, opening: Placed, outline: Run[]): LocatedFinding[] {
  const wall = outline[opening.wall - 1]
  if (!wall) return []
  if (opening.width > wall.length)
    return [findingIn(room, openingWiderThanWall(opening, wall.length), [...opening.path, "wall"])]
  return opening.fromLeft + opening.width > wall.length + tapeOf(room)
    ? [findingIn(room, openingBeyondWall(opening, wall.length), [...opening.path, "fromLeft"])]
    : []
}

/** How far a taped length of the room can be trusted, mm: as written, else the format's own default. */
function tapeOf(room: YamlFile): number {
  const written = valueAt(room.value, ["measured", "tape"])
  const untold = 3
  return typeof written === "number" ? written : untold
}

function overlapping(room: YamlFile, placed: Placed[]): LocatedFinding[] {
  return placed.flatMap((opening, index) => {
    const other = placed.slice(0, index).find((before) => overlap(before, opening))
    return other ? [findingIn(room, openingsOverlap(opening, other), [...opening.path, "fromLeft"])] : []
  })
}

function overlap(one: Placed, other: Placed): boolean {
  return (
    one.wall === other.wall &&
    one.inSlope === other.inSlope &&
    one.fromLeft < other.fromLeft + other.width &&
    other.fromLeft < one.fromLeft + one.width &&
    one.bottom < other.top &&
    other.bottom < one.top
  )
}

function inNoWall(
  room: YamlFile,
  opening: Placed,
  outline: Run[],
  doors: ReadonlyMap<string, DoorEntry>,
): LocatedFinding[] {
  const id = textAt(valueAt(room.value, opening.path), "door") ?? ""
  const is = outline[opening.wall - 1]?.is
  const isOpenWay = doors.get(id)?.lining === "none"
  return is === "open-edge" && !isOpenWay
    ? [findingIn(room, doorInNoWall(id, is), [...opening.path, "wall"])]
    : []
}

/** The room's entry must be a doorway or hatch in wall 1, or a stair that reaches the room. */
function entryElsewhere(room: YamlFile, stairs: string[]): LocatedFinding[] {
  const entry = textAt(room.value, "entry")
  if (entry === undefined || stairs.includes(entry)) return []
  const places = new Map<string, unknown>([
    ...listAt(room, ["doors"]).map((here) => [textAt(here, "door") ?? "", valueAt(here, ["wall"])] as const),
    ...listAt(room, ["windows"])
      .filter((here) => textAt(here, "kind") === "hatch")
      .map((here) => [textAt(here, "id") ?? "", valueAt(here, ["wall"])] as const),
  ])
  if (!places.has(entry))
    return [findingIn(room, noSuchEntry(entry, nearest(entry, [...places.keys(), ...stairs])), ["entry"])]
  const wall = places.get(entry)
  return typeof wall === "number" && wall !== 1
    ? [findingIn(room, entryNotInWall1(entry, wall), ["entry"])]
    : []
}

function stairsOf(house: YamlFile, room: string | undefined): string[] {
  return listAt(house, ["stairs"]).flatMap((stair) =>
    [textAt(stair, "fromRoom"), textAt(stair, "toRoom")].includes(room) ? (textAt(stair, "id") ?? []) : [],
  )
}
