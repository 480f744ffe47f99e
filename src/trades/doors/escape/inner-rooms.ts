import type { Finding } from "../../../kernels/finding.ts"
import { fixed, type Mm, mmText, squareMetres } from "../../../kernels/units.ts"
import type { House, Room, WindowInRoom } from "../../../survey/room.ts"
import type { Passed } from "../../trade.ts"
import { floorLevel } from "../floors.ts"
import type { RulesRead } from "../rules-read.ts"
import type { StoreyHeights } from "./storeys.ts"
import { isCirculation, isHabitable, outside, shortestWay, waysOf } from "./ways.ts"

interface InnerCase {
  house: House
  passed: Passed
  heights: StoreyHeights
  rules: RulesRead
}

/**
 * Rooms to live in whose only way out leads through another room to live in, and rooms of low upper storeys without a window to
 * escape by. Wash rooms off a bedroom are no inner rooms.
 * @returns a warning for each, at the room's file
 */
export function innerRoomFindings(about: InnerCase): Finding[] {
  const limit = about.rules.value("door-escape-storey-limit")
  return about.house.rooms.filter(isLivingSpace).flatMap((room) => {
    const height = heightOf(room, about)
    const inner = isInner(room, about.house)
    if (inner && height > limit) return [innerRoom(room, null)]
    const wantsWindow =
      inner || (height > storeyRise(about) && height <= limit && about.heights.asks === "open")
    if (!wantsWindow) return []
    const fault = windowFault(room, about)
    if (!fault) return []
    return [inner ? innerRoom(room, fault) : noWindow(room, fault)]
  })
}

/** True if the only way from a room to the open air or to a hall or landing leads through another room to live in. */
function isInner(room: Room, house: House): boolean {
  const rooms = new Map(house.rooms.map((each) => [each.id, each]))
  const ways = waysOf(house)
  if (!ways.some((way) => way.from === room.id)) return false
  const out = shortestWay(
    ways,
    room.id,
    (way) => way.to === outside || isCirculation(rooms.get(way.to)),
    (id) => rooms.has(id) && !isHabitable(rooms.get(id)),
  )
  return out === null
}

function isLivingSpace(room: Room): boolean {
  return isHabitable(room) && room.use !== "kitchen"
}

function heightOf(room: Room, { house, passed }: InnerCase): Mm {
  return floorLevel(room, passed) - house.lowestGround
}

/** Height of the lowest storey's floor: rooms no higher leave by their door or window at the ground. */
function storeyRise({ heights }: InnerCase): Mm {
  return heights.storeys.filter((each) => each.used)[0]?.height ?? 0
}

/** What keeps every window of the room from being one to escape by; null if one serves. */
function windowFault(room: Room, about: InnerCase): string | null {
  const openings = room.windows.filter((each) => each.kind !== "hatch")
  if (openings.length === 0) return "it has no window in the survey"
  const faults = openings.map((each) => faultOf(each, room, about))
  return faults.some((fault) => fault === null) ? null : faults.filter((f) => f !== null).join("; ")
}

function faultOf(opening: WindowInRoom, room: Room, { rules, passed }: InnerCase): string | null {
  const area = squareMetres(opening.width * opening.height)
  const side = Math.min(opening.width, opening.height)
  const sill = sillOverFloor(opening, room, passed)
  const leastArea = rules.value("door-escape-window-area")
  const leastSide = rules.value("door-escape-window-side")
  const mostSill = rules.value("door-escape-window-sill")
  if (area < leastArea) return `window ${opening.id} opens ${fixed(area, 3)} m2, ${leastArea} m2 is the least`
  if (side < leastSide)
    return `window ${opening.id} is ${mmText(side)} mm one way, ${leastSide} mm is the least`
  if (sill > mostSill)
    return `the bottom of window ${opening.id} is ${mmText(sill)} mm above the floor, ${mmText(mostSill)} mm is the most`
  return null
}

function sillOverFloor(opening: WindowInRoom, room: Room, passed: Passed): Mm {
  const lift =
    room.measured.heightsFrom === "finished-floor" ? 0 : floorLevel(room, passed) - room.storey.deck
  const old = room.measured.heightsFrom === "old-floor" ? room.storey.finishNow : 0
  return bottomOf(opening, room) + old - lift
}

function bottomOf(opening: WindowInRoom, room: Room): Mm {
  if (opening.kind !== "roof-window") return opening.sill
  const slope = room.ceiling.parts.find((part) => part.kind === "slope" && part.wall === opening.wall)
  const wall = room.walls.find((each) => each.number === opening.wall)
  const dwarf = wall ? Math.min(...wall.elevation.filter((p) => p.y > 0).map((p) => p.y)) : 0
  return slope ? dwarf + opening.sill * Math.sin((slope.pitch * Math.PI) / 180) : opening.sill
}

function innerRoom(room: Room, fault: string | null): Finding {
  return {
    code: "escape-inner-room",
    severity: "warning",
    at: { file: room.file, path: ["doors"] },
    message: fault
      ? `${room.name} (${room.id}) is reached only through another room, and ${fault}.`
      : `${room.name} (${room.id}) is reached only through another room, on a floor too high to escape by a window.`,
    expected:
      "A door to a hall or landing; on a storey not over 4.5 m a window to escape by (Approved Document B vol 1, 2.10 and 2.11; paragraph numbers from memory).",
    mend: "Give the room a way of its own, or agree with building control.",
  }
}

function noWindow(room: Room, fault: string): Finding {
  return {
    code: "escape-window-too-small",
    severity: "warning",
    at: { file: room.file, path: ["windows"] },
    message: `${room.name} (${room.id}) leads to a stair that is not protected, and ${fault}.`,
    expected: "A window with 0.33 m2 clear, 450 mm either way, bottom not over 1,100 mm above the floor.",
    mend: "Measure the clear opening of the open casement, and ask building control.",
  }
}
