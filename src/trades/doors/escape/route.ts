import type { At, Finding } from "../../../kernels/finding.ts"
import type { House, Room } from "../../../survey/room.ts"
import type { StoreyHeights } from "./storeys.ts"
import {
  cupboard,
  garage,
  isCirculation,
  isHabitable,
  isOpenWay,
  outside,
  shortestWay,
  type Way,
  waysOf,
} from "./ways.ts"

/** The way out from the highest storey, and the rooms of the stair that are to be kept free of fire. */
export interface EscapeRoute {
  /** Ways in walking order from the top of the highest stair to the open air; null where none was found. */
  route: Way[] | null
  /** Rooms of the stair enclosure: halls and landings that the stairs join, down to the final exit. */
  stairway: ReadonlySet<string>
  /** Rooms other than halls and landings that the stair stands in, is open to, or leads through. */
  through: string[]
  findings: Finding[]
}

const stairsAt = { file: "house.yaml", path: ["stairs"] } satisfies At

/**
 * The escape route of a house with the stairs that lead to its highest storey.
 * @returns the stairway's rooms; warnings for a route through a room, an open plan, a house without a final exit
 */
export function escapeRoute(house: House, heights: StoreyHeights): EscapeRoute {
  const ways = waysOf(house)
  const rooms = new Map(house.rooms.map((room) => [room.id, room]))
  const start = topOfStair(house, heights) ?? firstHall(house)
  const finalExits = new Set(house.doors.filter((door) => door.finalExit).map((door) => door.id))
  const isExit = (way: Way) => way.to === outside && finalExits.has(way.id)
  const kept = start ? shortestWay(ways, start, isExit, (id) => isCirculation(rooms.get(id))) : null
  const route = kept ?? (start ? shortestWay(ways, start, isExit, (id) => rooms.has(id)) : null)
  const enclosure = stairRooms(house, route, start)
  const stairway = new Set(enclosure.filter((id) => isCirculation(rooms.get(id)) || !rooms.has(id)))
  const through = enclosure.filter((id) => rooms.has(id) && !isCirculation(rooms.get(id)))
  const findings = routeFindings({ house, heights, route, through, rooms })
  return { route, stairway, through, findings }
}

/** The room at the head of the stair to the highest used storey. */
function topOfStair(house: House, heights: StoreyHeights): string | undefined {
  const used = heights.storeys.filter((each) => each.used).map((each) => each.storey.id)
  for (const storey of used.reverse()) {
    const stair = house.stairs.find((each) => each.to === storey)
    if (stair) return stair.toRoom
  }
  return undefined
}

function firstHall(house: House): string | undefined {
  return house.rooms.find((room) => isCirculation(room))?.id
}

/** Rooms the stairs stand in, those on the way out, and those open to any of them. */
function stairRooms(house: House, route: Way[] | null, start: string | undefined): string[] {
  const found = new Set<string>()
  if (house.stairs.length === 0) return []
  if (start) found.add(start)
  for (const stair of house.stairs) {
    found.add(stair.fromRoom)
    found.add(stair.toRoom)
  }
  for (const way of route ?? []) if (way.to !== outside) found.add(way.to)
  const beyond = [outside, garage, cupboard]
  const open = house.doors
    .filter(isOpenWay)
    .filter(({ between }) => !between.some((id) => beyond.includes(id)))
  let grown = true
  while (grown) {
    const before = found.size
    for (const { between } of open) {
      const [a, b] = between
      if (found.has(a) || found.has(b)) found.add(a).add(b)
    }
    grown = found.size > before
  }
  return [...found]
}

interface RouteCase {
  house: House
  heights: StoreyHeights
  route: Way[] | null
  through: string[]
  rooms: ReadonlyMap<string, Room>
}

function routeFindings({ house, heights, route, through, rooms }: RouteCase): Finding[] {
  const findings: Finding[] = []
  if (house.stairs.length > 0 && route === null) findings.push(noExit())
  if (heights.asks === "open") return findings
  const passed = new Set((route ?? []).slice(0, -1).map((way) => way.to))
  const open = new Set(house.doors.filter(isOpenWay).flatMap((door) => door.between))
  for (const id of through) {
    const room = rooms.get(id)
    if (!room) continue
    const isOpen = isHabitable(room) && (open.has(id) || house.stairs.some((s) => s.fromRoom === id))
    if (isOpen) findings.push(openPlan(room))
    else if (passed.has(id)) findings.push(throughRoom(room))
  }
  return findings
}

function noExit(): Finding {
  return {
    code: "escape-no-final-exit",
    severity: "warning",
    at: { file: "house.yaml", path: ["doors"] },
    message: "No way from the highest stair to a doorway marked as final exit was found.",
    expected: "One doorway to outside with finalExit: true, reached from the stair.",
    mend: "Mark the final exit, or enter the doorways between it and the stair.",
  }
}

function openPlan(room: Room): Finding {
  return {
    code: "escape-open-plan",
    severity: "warning",
    at: stairsAt,
    message: `The stair is open to ${room.name} (${room.id}): it is not enclosed down to the final exit.`,
    expected:
      "Partitions of 30 minutes with doors of 20 minutes between stair and room; or sprinklers to the open plan with a partition and door between the storeys and cooking kept apart (Approved Document B vol 1, 2.21 to 2.23, as quoted by a fire consultancy).",
    mend: "Agree with building control which way is taken before work begins.",
  }
}

function throughRoom(room: Room): Finding {
  return {
    code: "escape-through-room",
    severity: "warning",
    at: stairsAt,
    message: `The way out from the highest storey leads through ${room.name} (${room.id}).`,
    expected:
      "A stair enclosed down to a final exit, or to two exits kept apart (Approved Document B vol 1, 2.5).",
    mend: "Make an enclosed way to the exit, or agree another with building control.",
  }
}
