import type { DoorEntry } from "../../../intake/schema/house.ts"
import type { House, Room } from "../../../survey/room.ts"

/** A way from one room to another, by a doorway, an open way or a stair. */
export interface Way {
  from: string
  to: string
  by: "door" | "open" | "stair"
  /** Id of the doorway or stair. */
  id: string
}

/** The open air, as doorways name it. */
export const outside = "outside"
/** A cupboard that is no room of its own, as doorways name it. */
export const cupboard = "cupboard"
/** A garage, as doorways name it. */
export const garage = "garage"

/** Every way of the house, both directions. */
export function waysOf(house: House): Way[] {
  const doors = house.doors.map((door) => ({ ends: door.between, by: doorKind(door), id: door.id }))
  const stairs = house.stairs.map((stair) => ({
    ends: [stair.fromRoom, stair.toRoom] as const,
    by: "stair" as const,
    id: stair.id,
  }))
  return [...doors, ...stairs].flatMap(({ ends: [a, b], by, id }) => [
    { from: a, to: b, by, id },
    { from: b, to: a, by, id },
  ])
}

/** True for an opening without a leaf: the rooms on both sides are one space for smoke. */
export function isOpenWay(door: DoorEntry): boolean {
  return (
    door.swingsInto === undefined && door.leafNow === undefined && (door.work.hang ?? "stays") === "stays"
  )
}

/** True for a room that only leads to others. */
export function isCirculation(room: Room | undefined): boolean {
  return room?.use === "landing" || room?.use === "hall"
}

/** True for a room to sit, sleep or cook in. */
export function isHabitable(room: Room | undefined): boolean {
  return room?.use === "bedroom" || room?.use === "study" || room?.use === "living" || room?.use === "kitchen"
}

/**
 * The shortest way, in steps, from a room to a goal through rooms that may be passed.
 * @returns the ways in walking order, or null if there is none
 */
export function shortestWay(
  ways: readonly Way[],
  start: string,
  isGoal: (way: Way) => boolean,
  mayPass: (room: string) => boolean,
): Way[] | null {
  const seen = new Set([start])
  let fronts: Way[][] = [[]]
  while (fronts.length > 0) {
    const next: Way[][] = []
    for (const walked of fronts) {
      const here = walked.at(-1)?.to ?? start
      for (const way of ways.filter((each) => each.from === here)) {
        if (isGoal(way)) return [...walked, way]
        if (seen.has(way.to) || !mayPass(way.to)) continue
        seen.add(way.to)
        next.push([...walked, way])
      }
    }
    fronts = next
  }
  return null
}

function doorKind(door: DoorEntry): "door" | "open" {
  return isOpenWay(door) ? "open" : "door"
}
