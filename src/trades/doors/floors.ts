import type { DoorEntry } from "../../intake/schema/house.ts"
import type { Mm } from "../../kernels/units.ts"
import type { House, Room } from "../../survey/room.ts"
import type { Passed } from "../trade.ts"

/** The floor under a closed leaf, on both sides of it. */
export interface ThresholdFloors {
  /** Finished floor of the room the leaf swings into, mm above the ground floor's finished level. */
  own: Mm
  /** Finished floor on the other side; null where it is not known (outside, garage, a room not surveyed). */
  other: Mm | null
  /** The higher of the two: what the foot of the leaf must clear. */
  highest: Mm
  /** Thickness of the new floor over the deck in the leaf's own room, mm. */
  buildUp: Mm
  /** How much the leaf's own floor rises over what lay on the deck at the survey, mm. */
  rise: Mm
  /** What one walks on there: `oak`, `tile`, `carpet`, `old` ... */
  finish: string
}

/** The part of the job that levels are read from. */
export interface Levels {
  house: House
  passed: Passed
}

/**
 * The room a doorway belongs to: the one its leaf swings into, else the second of the two it joins; where that is no surveyed
 * room (outside, a garage), the other one. That room's pack carries the door's sheet.
 */
export function homeOf(door: DoorEntry, house: House): string | null {
  const wished = [door.swingsInto, door.between[1], door.between[0]]
  return wished.find((id) => id !== undefined && house.rooms.some((room) => room.id === id)) ?? null
}

/** Level of a room's finished floor above the ground floor's finished level, mm: deck and what lies on it. */
export function floorLevel(room: Room, passed: Passed): Mm {
  return room.storey.deck + buildUpOf(room, passed)
}

/** The floors a leaf closes over. */
export function thresholdFloors(door: DoorEntry, home: Room, { house, passed }: Levels): ThresholdFloors {
  const own = floorLevel(home, passed)
  const far = door.between.find((id) => id !== home.id)
  const room = house.rooms.find((each) => each.id === far)
  const other = room && room.storey.id === home.storey.id ? floorLevel(room, passed) : null
  const buildUp = buildUpOf(home, passed)
  return {
    own,
    other,
    highest: Math.max(own, other ?? own),
    buildUp,
    rise: buildUp - home.storey.finishNow,
    finish: passed.get(home.id)?.floorFinish ?? "old",
  }
}

/** A height taped at a door from its datum, as a height over the highest finished floor it closes over, mm. */
export function overFloor(height: Mm, from: DoorEntry["heightsFrom"], at: FloorsAt): Mm {
  return datumLevel(from, at) + height - at.floors.highest
}

/** Where a height was taped. */
export interface FloorsAt {
  home: Room
  floors: ThresholdFloors
  lowestGround: Mm
}

function datumLevel(from: DoorEntry["heightsFrom"], { home, floors, lowestGround }: FloorsAt): Mm {
  switch (from) {
    case "deck":
      return home.storey.deck
    case "old-floor":
      return home.storey.deck + home.storey.finishNow
    case "finished-floor":
      return floors.own
    case "ground":
      return lowestGround
  }
}

function buildUpOf(room: Room, passed: Passed): Mm {
  return passed.get(room.id)?.floorBuildUp ?? room.storey.finishNow
}
