import { type Draft, listAt, textAt } from "../draft.ts"
import { doorNotPlaced, doorOfOtherRooms, doorToItself, swingsElsewhere } from "../messages.ts"
import { beyond, type DoorEntry, door } from "../schema/house.ts"
import { id as roomIdForm } from "../schema/values.ts"
import { findingIn, type LocatedFinding, type YamlFile } from "../yaml-file.ts"
import { soundEntries, soundPart } from "./sound.ts"

/**
 * Doorways and rooms that contradict each other: a room that does not place a doorway joining it, or places one that does not;
 * a doorway between a room and itself; a leaf that swings into neither of its rooms.
 */
export function doorways(draft: Draft, earlier: readonly LocatedFinding[]): LocatedFinding[] {
  const { house, rooms } = draft.files
  const doors = soundEntries(house, ["doors"], door, earlier)
  const rules = [toItself, swinging]
  return [
    ...doors.flatMap(({ entry, path }) => rules.flatMap((rule) => rule(house, entry, path))),
    ...doors.flatMap(({ entry, path }) => notPlaced(house, entry, path, rooms)),
    ...rooms.flatMap((room) =>
      ofOtherRooms(
        room,
        doors.map(({ entry }) => entry),
        earlier,
      ),
    ),
  ]
}

type Path = (string | number)[]

function toItself(house: YamlFile, { id, between: [one, other] }: DoorEntry, path: Path): LocatedFinding[] {
  return one === other ? [findingIn(house, doorToItself(id, one), [...path, "between", 1])] : []
}

function swinging(house: YamlFile, { id, between, swingsInto }: DoorEntry, path: Path): LocatedFinding[] {
  return swingsInto !== undefined && !between.includes(swingsInto)
    ? [findingIn(house, swingsElsewhere(id, swingsInto, between), [...path, "swingsInto"])]
    : []
}

function notPlaced(
  house: YamlFile,
  { id, between }: DoorEntry,
  path: Path,
  rooms: YamlFile[],
): LocatedFinding[] {
  return [...new Set(between)].filter(isRoom).flatMap((roomId) => {
    const room = rooms.find((each) => textAt(each.value, "id") === roomId)
    return !room || placedIn(room).includes(id)
      ? []
      : [findingIn(house, doorNotPlaced(id, roomId), [...path, "between", between.indexOf(roomId)])]
  })
}

function isRoom(id: string): boolean {
  return !(beyond as readonly string[]).includes(id)
}

function ofOtherRooms(
  room: YamlFile,
  doors: DoorEntry[],
  earlier: readonly LocatedFinding[],
): LocatedFinding[] {
  const roomId = soundPart(room, ["id"], roomIdForm, earlier)
  return placedIn(room).flatMap((id, index) => {
    const of = doors.find((each) => each.id === id)
    return of && roomId !== undefined && !of.between.includes(roomId)
      ? [findingIn(room, doorOfOtherRooms(of.id, of.between), ["doors", index, "door"])]
      : []
  })
}

function placedIn(room: YamlFile): string[] {
  return listAt(room, ["doors"]).map((here) => textAt(here, "door") ?? "")
}
